import { isDataTerm } from '../../claim';
import { termWords } from '../data-term';
import type { Kit } from '../kit';

/** What the listing says in the seller's own words; what only the page's data say is told as theirs, unquoted. */
export const saying = ({ words, inData }: { words: string; inData: boolean }, kit: Kit): string =>
  inData || isDataTerm(words)
    ? `In den Daten der Seite steht ${isDataTerm(words) ? termWords(words) : words}`
    : `Im Angebot steht ${kit.quote(words)}`;
