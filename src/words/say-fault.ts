import type { MakerFault } from '../maker';
import { faults as german } from './de/faults';
import { faults as english } from './en/faults';
import type { FaultWords } from './fault-words';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import { pseudo } from './pseudo';

/** Made when first asked for: only who writes a maker file needs them. */
const catalogue = (language: Language): FaultWords =>
  language === 'de' ? german : language === 'en' ? english : (pseudo(english) as FaultWords);

/** What is wrong with a maker file, without a full stop. */
export function sayFault(fault: MakerFault, line: number | undefined, language: Language): string {
  const { faults, inLine } = catalogue(language);
  const said = (faults[fault.kind] as (fault: MakerFault, kit: Kit) => string)(fault, kitFor(language));
  return line === undefined ? said : inLine(line, said);
}

/** What was to stand there instead; null where nobody can say. */
export const sayExpected = (fault: MakerFault, language: Language): string | null =>
  (catalogue(language).expected[fault.kind] as ((fault: MakerFault, kit: Kit) => string) | undefined)?.(
    fault,
    kitFor(language),
  ) || null;
