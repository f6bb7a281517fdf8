import { defineMark, type MarkFound } from './define';
import { foundByRow, rowOf, rowsById } from './rows';
import table from './tables/care-labels.json';
import laws from './tables/us-textile-laws.json';

const rows = rowsById(table.rows);
const lawRows = rowsById(laws.rows);

const symbolsOnly =
  /\b(?:symbols?[\s-]only|only\s+symbols|symbols\s+without\s+words|wordless)\b[^.\n]{0,30}\b(?:care\s+)?label\b|\bcare\s+label\b[^.\n]{0,30}\b(?:symbols?\s+only|only\s+symbols|symbols\s+without\s+words)\b/giu;
const careSymbols = /\b(?:care|washing|laundry)\s+symbols\b/giu;
const dryingSymbol = /\b(?:drying|tumble[\s-]dry)\s+symbol\b/giu;
const careWords =
  /\b(?:dry\s+clean\s+only|do\s+not\s+(?:wash|bleach|tumble\s+dry|iron)|machine\s+wash|hand\s+wash\s+only|wipe\s+clean\s+only)\b/giu;
const forUs = /\b(?:U\.?S\.?(?:A\.?)?|American|United\s+States)\b|\bRN\s?#?\s?\d{3,6}\b/u;
const reach = 80;

const all = (text: string, pattern: RegExp, found: (start: number, end: number) => MarkFound[]): MarkFound[] =>
  [...text.matchAll(pattern)].flatMap((match) => found(match.index, match.index + match[0].length));

/**
 * When care symbols and care words came into use; firm only for symbols without words in the United States. Symbols cannot
 * be read from print, so they count where the listing describes them; care words count where they stand on print.
 */
export const careLabel = defineMark({
  id: 'care-label',
  find: (text, where) => {
    const only = all(text, symbolsOnly, (start, end) => {
      const isForUs = forUs.test(text.slice(Math.max(0, start - reach), end + reach));
      const row = isForUs ? rowOf(rows, 'us-symbols-only') : rowOf(rows, 'symbols-europe');
      return foundByRow(row, start, end, isForUs ? 'for-us-only' : undefined);
    });
    const symbols = all(text, careSymbols, (start, end) => foundByRow(rowOf(rows, 'symbols-europe'), start, end));
    const drying = all(text, dryingSymbol, (start, end) => foundByRow(rowOf(rows, 'drying-symbol'), start, end));
    const words =
      where.foundIn === 'photo'
        ? all(text, careWords, (start, end) => foundByRow(rowOf(lawRows, 'care-words'), start, end))
        : [];
    return [...only, ...symbols, ...drying, ...words].sort((a, b) => a.start - b.start);
  },
});
