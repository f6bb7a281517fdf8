import { defineMark } from './define';
import { foundOnLabel, type WrittenForm } from './forms';
import { rowsById } from './rows';
import table from './tables/codes-and-web.json';

const rows = rowsById(table.rows);
const forms: WrittenForm[] = [
  { row: 'https-or-handle', pattern: /\bhttps:\/\/[\w.-]+\.\w{2,}/giu },
  { row: 'web-address', pattern: /(?<!https:\/\/)\b(?:http:\/\/|www\.)[\w-]+(?:\.[\w-]+)+/giu },
  { row: 'web-address', pattern: /(?<![@\w./-])[a-z][a-z0-9-]{2,}\.(?:com|co\.uk|fr|it|de|net|org)\b(?![\w@])/giu },
  { row: 'e-mail', pattern: /(?<![\w.+-])[\w.+-]{1,64}@[\w-]{1,63}(?:\.[\w-]{1,63}){1,4}/gu },
];

/** The web is open to the public since August 1991: a label with an address is no older. */
export const webAddress = defineMark({
  id: 'web-address',
  find: (text, where) => foundOnLabel(forms, rows, text, where),
});
