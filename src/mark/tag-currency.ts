import { defineMark } from './define';
import { foundByForms, type WrittenForm } from './forms';
import { rowsById } from './rows';
import table from './tables/tag-currencies.json';

const rows = rowsById(table.rows);
const amount = '\\d{1,3}(?:[ .,]\\d{3}){0,3}(?:[.,](?:\\d{2}|-))?';
const either = (sign: string) =>
  new RegExp(
    `(?<![\\p{L}\\d])(?:${sign})\\s?${amount}(?![\\p{L}\\d])|(?<![\\d.,])${amount}\\s?(?:${sign})(?![\\p{L}\\d])`,
    'gu',
  );

const forms: WrittenForm[] = [
  { row: 'dem', pattern: either('DM|DEM') },
  // Francs alone are Swiss ones too, which are paid to this day.
  { row: 'frf', pattern: either('FRF|FF|[Ff]rancs [Ff]rançais|French [Ff]rancs') },
  { row: 'itl', pattern: either('ITL|Lit\\.?|Lire|lire|₤') },
  { row: 'esp', pattern: either('ESP|Ptas?\\.?|ptas?\\.?|pesetas') },
  { row: 'ats', pattern: either('ATS|öS|ÖS') },
  { row: 'bef', pattern: either('BEF') },
  { row: 'nlg', pattern: either('NLG|Hfl\\.?|hfl\\.?|ƒ') },
  { row: 'iep', pattern: either('IEP|IR£') },
  { row: 'eur', pattern: either('EUR|€') },
  {
    row: 'gbp-shillings',
    pattern:
      /(?<![\d/])\d{1,2}\/(?:\d{1,2}d?|-)(?![\d/])(?=[^\n]{0,20}\b(?:tax|net|each)\b)|£\d{1,4}[.\s-]\d{1,2}s?[.\s-]\d{1,2}d/giu,
  },
];

/**
 * When the currency of a price was in use, and so about when the piece was sold. It stands on a tag read from a photo: a
 * listing's own price says nothing of the piece.
 */
export const tagCurrency = defineMark({
  id: 'tag-currency',
  find: (text, { foundIn }) =>
    foundIn === 'listing'
      ? []
      : foundByForms(forms, rows, text, 'dates-sale').map((found) =>
          // A price in euro does not make the piece younger: unsold stock was priced anew.
          found.says.kind === 'row' && found.says.row === 'eur' ? { ...found, spans: [] } : found,
        ),
});
