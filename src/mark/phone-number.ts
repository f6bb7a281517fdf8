import { defineMark } from './define';
import { foundOnLabel, type WrittenForm } from './forms';
import { rowsById } from './rows';
import table from './tables/phone-numbers.json';

const rows = rowsById(table.rows);
const before = '(?<![\\d\\p{L}.-])';
const after = '(?![\\d-])';
/** Seven local digits, or x where a number is written as an example. */
const seven = '[\\dx]{3}[\\s-][\\dx]{4}';

const forms: WrittenForm[] = [
  { row: 'london-0171-0181', pattern: new RegExp(`${before}\\(?01[78]1\\)?[\\s-]{0,2}${seven}${after}`, 'giu') },
  { row: 'london-071-081', pattern: new RegExp(`${before}\\(?0[78]1\\)?[\\s-]{1,2}${seven}${after}`, 'giu') },
  { row: 'london-01', pattern: new RegExp(`${before}\\(?01\\)?[\\s-]{1,2}${seven}${after}`, 'giu') },
  {
    row: 'london-020',
    pattern: new RegExp(`${before}\\(?020\\)?[\\s-]{1,2}[378][\\dx]{3}[\\s-][\\dx]{4}${after}`, 'giu'),
  },
  {
    row: 'uk-01',
    pattern: new RegExp(`${before}\\(?01(?![78]1)[2-9]\\d{2}\\)?[\\s-]{1,2}\\d{3}\\s?\\d{3}${after}`, 'giu'),
  },
  { row: 'french-10', pattern: new RegExp(`${before}0[1-5](?:[\\s.]\\d{2}){4}${after}`, 'giu') },
  {
    row: 'us-toll-free',
    pattern: new RegExp(`${before}(?:1[\\s-])?\\(?800\\)?[\\s-]{1,2}\\d{3}[\\s-]\\d{4}${after}`, 'giu'),
  },
  { row: 'us-area-code', pattern: new RegExp(`${before}\\([2-9][01]\\d\\)\\s?\\d{3}-\\d{4}${after}`, 'giu') },
  { row: 'country-code', pattern: /(?<![\d\p{L}])\+\d{1,3}[\s(-]\(?\d[\d\s()-]{6,14}\d/gu },
];

/** When numbers of that form were in use: the label is no older. */
export const phoneNumber = defineMark({
  id: 'phone-number',
  find: (text, where) => foundOnLabel(forms, rows, text, where),
});
