import { defineMark, standsOnPiece } from './define';
import { foundByForms, type WrittenForm } from './forms';
import { rowsById } from './rows';
import table from './tables/us-textile-laws.json';

const rows = rowsById(table.rows);
/** Generic fibre names of the Textile Fiber Products Identification Act and its rules (16 CFR 303.7), and natural ones. */
const fibres =
  'acetate|acrylic|cotton|elastane|linen|modacrylic|nylon|polyamide|polyester|polyurethane|ramie|rayon|silk|spandex|viscose';
const shareOf = (names: string) =>
  new RegExp(`\\b\\d{1,3}\\s?%\\s+(?:\\p{L}+\\s)?(?:${names})\\b|\\b(?:${names})\\s+\\d{1,3}\\s?%`, 'giu');

const forms: WrittenForm[] = [
  { row: 'reprocessed-wool', pattern: /\bre(?:processed|used)\s+wool\b/giu },
  { row: 'wool-share', pattern: shareOf('wool') },
  { row: 'fibre-shares', pattern: shareOf(fibres) },
];

/**
 * Usual since the laws that ask for them; softly, since makers could write so before.
 * Fibre shares count where they stand on a label: in a listing "100% cotton" is the seller's own description.
 */
export const fibreLaw = defineMark({
  id: 'fibre-law',
  find: (text, where) =>
    // "Reprocessed wool" is a label's word wherever it stands.
    foundByForms(
      forms,
      rows,
      text,
      'law-of-us',
      (row, at) => row === 'reprocessed-wool' || standsOnPiece(text, at, where),
    ),
});
