import type { LayoutSays } from '../code';
import { layouts as german } from './de/layouts';
import { layouts as english } from './en/layouts';
import { type Kit, kitFor } from './kit';
import type { Language } from './language';
import type { LayoutWords } from './layout-words';
import { pseudo } from './pseudo';

/** Made when first asked for: no screen says them at its start. */
const catalogue = (language: Language): LayoutWords =>
  language === 'de' ? german : language === 'en' ? english : (pseudo(english) as LayoutWords);

/** What one part of a worked-out layout does. */
export const sayLayoutPart = (says: LayoutSays, language: Language): string =>
  (catalogue(language)[says.kind] as (says: LayoutSays, kit: Kit) => string)(says, kitFor(language));
