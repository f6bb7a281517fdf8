import { findPlaces } from '../text';
import { defineMark, type FoundWhere, type MarkFound } from './define';
import type { WrittenForm } from './forms';
import type { RowName } from './row-names';
import { foundByRow, rowOf, rowsById } from './rows';
import table from './tables/origin-wording.json';

const rows = rowsById(table.rows);

/**
 * The words that call up each row. `alone`: the name counts wherever it stands on print; else only after "made in",
 * since Korea, Ceylon and Persia are also words of other things.
 */
const wordings: (WrittenForm & { alone: boolean })[] = [
  { row: 'occupied-japan', pattern: /\boccupied\s+japan\b/giu, alone: true },
  { row: 'nippon', pattern: /\bnippon\b/giu, alone: false },
  {
    row: 'zone-germany',
    pattern: /\b(?:U\.?\s?S\.?|british|french|american)\s+zone,?\s+(?:of\s+)?germany\b/giu,
    alone: true,
  },
  { row: 'west-germany', pattern: /\bw(?:est|estern|\.)\s?-?\s?germany\b/giu, alone: true },
  {
    row: 'east-germany',
    pattern: /\beast\s+germany\b|\bgerman\s+democratic\s+republic\b|\b(?:GDR|DDR)\b/gu,
    alone: true,
  },
  { row: 'ussr', pattern: /\bU\.?S\.?S\.?R\b\.?|\bsoviet\s+union\b|\bCCCP\b/giu, alone: true },
  { row: 'czechoslovakia', pattern: /\bczecho-?\s?slovakia\b/giu, alone: true },
  { row: 'czech-republic', pattern: /\bczech\s+republic\b/giu, alone: true },
  { row: 'slovakia', pattern: /(?<!czecho-?\s?)\bslovakia\b/giu, alone: true },
  { row: 'yugoslavia', pattern: /\b[yj]ugoslavia\b/giu, alone: true },
  { row: 'croatia-slovenia-macedonia-bosnia', pattern: /\b(?:croatia|slovenia|macedonia|bosnia)\b/giu, alone: false },
  { row: 'serbia-and-montenegro', pattern: /\bserbia\s+(?:and|&)\s+montenegro\b/giu, alone: true },
  { row: 'burma', pattern: /\bburma\b/giu, alone: false },
  { row: 'myanmar', pattern: /\bmyanmar\b/giu, alone: false },
  {
    row: 'british-hong-kong',
    pattern: /\b(?:british|(?:british\s{1,8})?crown\s{1,8}colony\s{1,8}(?:of\s{1,8})?)\s{0,8}hong\s{0,8}kong\b/giu,
    alone: true,
  },
  { row: 'empire-made', pattern: /\bempire\s+made\b/giu, alone: true },
  {
    row: 'taiwan',
    pattern: /\btaiwan\b|\brepublic\s+of\s+china\b(?<!people['’]?s\s+republic\s+of\s+china)/giu,
    alone: false,
  },
  { row: 'prc', pattern: /\bpeople['’]?s\s+republic\s+of\s+china\b|\bP\.?R\.?C\b\.?/giu, alone: false },
  { row: 'korea', pattern: /\bkorea\b/giu, alone: false },
  { row: 'siam', pattern: /\bsiam\b/giu, alone: false },
  { row: 'persia', pattern: /\bpersia\b/giu, alone: false },
  { row: 'ceylon', pattern: /\bceylon\b/giu, alone: false },
  { row: 'east-pakistan', pattern: /\beast\s+pakistan\b/giu, alone: true },
  { row: 'rhodesia', pattern: /\brhodesia\b/giu, alone: false },
  { row: 'zaire', pattern: /\bza[iï]re\b/giu, alone: false },
  { row: 'made-in-eu', pattern: /\bE\.?U\b\.?|\beuropean\s+union\b/gu, alone: false },
  { row: 'made-in-eec', pattern: /\bE\.?E\.?C\b\.?/gu, alone: false },
];

const madeIn = /\b(?:made|manufactured|produced|product|fabriqué)\s{1,8}(?:in|of|en)\s{1,8}(?:the\s{1,8})?$/iu;
const madeInReach = 24;
const caution = 'old-labels';

/** Where "made in" begins right before `start`; null where something else stands there. */
function madeInBefore(text: string, start: number): number | null {
  const from = Math.max(0, start - madeInReach);
  const at = text.slice(from, start).search(madeIn);
  return at < 0 ? null : from + at;
}

/**
 * When a country's name or a phrase of origin was in use. In a listing the name alone is the seller's talk: there it counts
 * only after "made in".
 */
export const originWording = defineMark({
  id: 'origin-wording',
  find: (text, where) => [...byWording(text, where), ...plainMadeIn(text, where)].sort((a, b) => a.start - b.start),
});

function byWording(text: string, where: FoundWhere): MarkFound[] {
  return wordings.flatMap(({ row, pattern, alone }) =>
    [...text.matchAll(pattern)].flatMap((match) => {
      const made = madeInBefore(text, match.index);
      if (made === null && !(alone && where.foundIn === 'photo') && row !== 'empire-made') return [];
      const place = row === severalCountries ? (findPlaces(`Made in ${match[0]}`)[0]?.place ?? null) : null;
      const of = place === null ? rowOf(rows, row) : { ...rowOf(rows, row), places: [place] };
      return foundByRow(of, made ?? match.index, match.index + match[0].length, caution, place);
    }),
  );
}

/** One row stands for four countries: the name in the words says which. */
const severalCountries: RowName = 'croatia-slovenia-macedonia-bosnia';

/** "Made in …" as a phrase, read from print only: a listing's "made in" is the seller's own words. */
function plainMadeIn(text: string, { foundIn }: FoundWhere): MarkFound[] {
  if (foundIn !== 'photo') return [];
  const row = rowOf(rows, 'made-in');
  return findPlaces(text).flatMap(({ form, place, start, end }) => {
    const from = form === 'made-in' ? madeInBefore(text, start) : null;
    if (from === null) return [];
    return foundByRow({ ...row, places: [place] }, from, end);
  });
}
