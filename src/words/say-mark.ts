import type { MarkCaution, MarkSays } from '../mark';
import { marks as german } from './de/marks';
import { marks as english } from './en/marks';
import { kitFor } from './kit';
import type { Language } from './language';
import type { MarkWords } from './mark-words';
import { pseudo } from './pseudo';

const catalogues: Record<Language, MarkWords> = {
  en: english,
  de: german,
  get 'en-XA'() {
    return pseudo(english) as MarkWords;
  },
};

/** What a mark tells, without a full stop. A look of before keeps the sentence itself, in English. */
export function sayMark(says: MarkSays | string, language: Language): string {
  if (typeof says === 'string') return says;
  const say = catalogues[language].says[says.kind] as (said: MarkSays, kit: ReturnType<typeof kitFor>) => string;
  return say(says, kitFor(language));
}

/** What a mark cannot settle. */
export function sayCaution(caution: MarkCaution, language: Language): string {
  const { notes, cautions, letterStyle } = catalogues[language];
  if (caution.kind === 'row') return notes[caution.row];
  return caution.kind === 'letter-style' ? letterStyle(caution.first) : cautions[caution.kind];
}
