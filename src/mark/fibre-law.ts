import { defineMark, type MarkFound, standsOnPiece } from './define';
import type { RowName } from './row-names';
import { foundByRow, rowOf, rowsById } from './rows';
import table from './tables/us-textile-laws.json';

const rows = rowsById(table.rows);
/** Generic fibre names of the Textile Fiber Products Identification Act and its rules (16 CFR 303.7), and natural ones. */
const fibres =
  'acetate|acrylic|cotton|elastane|linen|modacrylic|nylon|polyamide|polyester|polyurethane|ramie|rayon|silk|spandex|viscose';
const shareOf = (names: string) =>
  new RegExp(`\\b\\d{1,3}\\s?%\\s+(?:\\p{L}+\\s)?(?:${names})\\b|\\b(?:${names})\\s+\\d{1,3}\\s?%`, 'giu');

const forms: { row: RowName; pattern: RegExp }[] = [
  { row: 'reprocessed-wool', pattern: /\bre(?:processed|used)\s+wool\b/giu },
  { row: 'wool-share', pattern: shareOf('wool') },
  { row: 'fibre-shares', pattern: shareOf(fibres) },
];
const caution = 'law-of-us';

/**
 * Usual since the laws that ask for them; softly, since makers could write so before.
 * Fibre shares count where they stand on a label: in a listing "100% cotton" is the seller's own description.
 */
export const fibreLaw = defineMark({
  id: 'fibre-law',
  find: (text, where) =>
    forms
      .flatMap(({ row, pattern }) =>
        [...text.matchAll(pattern)].flatMap((match): MarkFound[] => {
          // "Reprocessed wool" is a label's word wherever it stands.
          const counts = row === 'reprocessed-wool' || standsOnPiece(text, match.index, where);
          return counts ? foundByRow(rowOf(rows, row), match.index, match.index + match[0].length, caution) : [];
        }),
      )
      .sort((a, b) => a.start - b.start),
});
