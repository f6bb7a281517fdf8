import type { Listing } from '../listing/types';
import { isAboutAnother, parseMeasures, sizesInDigits } from '../text';
import { notPlaced } from './not-placed';
import { type ClaimDraft, foldedRange, type Passage, saidIn, saidInData } from './passage';
import { runsOf } from './runs';
import { isSaidOfThing } from './subject';

/** Measurements of the text, else those of the page's own data. */
export function measureClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const read = passages.map((from) =>
    parseMeasures(sizesInDigits(from.text, from.language), from.language).flatMap((found): ClaimDraft[] => {
      const [start, end] = foldedRange(from, found);
      if (isAboutAnother(from.folded.text, start, end)) return [];
      // "The box is 40 x 35 cm": no side of the piece.
      return isSaidOfThing(from.folded.text, start, from.title)
        ? [notPlaced(from, 'measure', [start, end])]
        : [{ kind: 'measure', measure: found.measure, ...saidIn(from, found, 0.85) }];
    }),
  );
  const inText = read.flatMap((drafts) => withoutRepeats(saidOnce(drafts)));
  if (inText.some(({ kind }) => kind === 'measure')) return inText;
  // What the page's reader took from the same words is no more the piece's.
  const isOpen = (words: string) => read.flat().some((one) => one.words.includes(words));
  const inData = listing.measures
    .filter(({ value, origin }) => origin !== 'visible' || !isOpen(value.words))
    .map(
      (candidate): ClaimDraft => ({
        kind: 'measure',
        measure: candidate.value,
        ...saidInData(candidate.value.words, candidate.confidence),
      }),
    );
  return [...inText, ...inData];
}

/** Sides of one row stand so near to each other. */
const withinRow = 16;

/** Sizes stated in two languages, or above and again below, are said once: a row of the same sides gives no more. */
function withoutRepeats(drafts: readonly ClaimDraft[]): ClaimDraft[] {
  const rows = runsOf(drafts, (before, draft) => draft.at.start - before.at.end <= withinRow);
  const seen = new Set<string>();
  const named = drafts.filter(isNamed);
  const namedSides = new Set(named.map(sideOf));
  const sidesOfRows = new Set(rows.filter((row) => row.length > 1).flatMap((row) => row.map(sideOf)));
  // "Busta, 28 cm … width 28 height 17": the length that its name has is one of the sides.
  const isOneOf = (one: ClaimDraft, row: readonly ClaimDraft[]): boolean => {
    const mm = sideOf(one);
    if (mm === null || isNamed(one)) return false;
    return (named.length > 1 && namedSides.has(mm)) || (row.length === 1 && sidesOfRows.has(mm));
  };
  return rows
    .map((row) => row.filter((one) => !isOneOf(one, row)))
    .filter((row) => !seen.has(sidesOf(row)) && seen.add(sidesOf(row)))
    .flat();
}

const sideOf = (one: ClaimDraft): number | null => (one.kind === 'measure' ? one.measure.mm : null);
const isNamed = (one: ClaimDraft): boolean => one.kind === 'measure' && one.measure.dimension !== 'unknown';
const sidesOf = (row: readonly ClaimDraft[]): string =>
  row.map((one) => (one.kind === 'measure' ? `${one.measure.dimension} ${one.measure.mm}` : one.words)).join();

/** Three sides in one clause of a passage are said once, as that clause. */
function saidOnce(drafts: readonly ClaimDraft[]): ClaimDraft[] {
  const open = new Set<number>();
  return drafts.filter(({ kind, at }) => kind !== 'not-placed' || (!open.has(at.start) && open.add(at.start)));
}
