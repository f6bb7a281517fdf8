import { isDataTerm } from '../../claim';
import { ofData, type Said, termWords } from '../data-term';
import type { Kit } from '../kit';

/** What the listing says in the seller's own words; what only the page's data say is told as theirs, unquoted. */
export const saying = ({ words, inData }: Said, kit: Kit): string =>
  ofData({ words, inData })
    ? `In den Daten der Seite steht ${isDataTerm(words) ? termWords(words) : words}`
    : `Im Angebot steht ${kit.quote(words)}`;
