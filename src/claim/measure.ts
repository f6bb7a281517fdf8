import type { Listing } from '../listing/types';
import { isAboutAnother, parseMeasures } from '../text';
import { notPlaced } from './not-placed';
import { type ClaimDraft, foldedRange, type Passage, saidIn, saidInData } from './passage';
import { isSaidOfThing } from './subject';

/** Measurements of the text, else those of the page's own data. */
export function measureClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) =>
    parseMeasures(from.text, from.language)
      .filter((found) => !isAboutAnother(from.folded.text, ...foldedRange(from, found)))
      .map((found): ClaimDraft => {
        const [start, end] = foldedRange(from, found);
        // "The box is 40 x 35 cm": no side of the piece.
        return isSaidOfThing(from.folded.text, start, end, from.title)
          ? notPlaced(from, 'measure', [start, end])
          : { kind: 'measure', measure: found.measure, ...saidIn(from, found, 0.85) };
      }),
  );
  if (inText.some(({ kind }) => kind === 'measure')) return saidOnce(inText);
  // What the page's reader took from the same words is no more the piece's.
  const isOpen = (words: string) => inText.some((one) => one.words.includes(words));
  const inData = listing.measures
    .filter(({ value, origin }) => origin !== 'visible' || !isOpen(value.words))
    .map(
      (candidate): ClaimDraft => ({
        kind: 'measure',
        measure: candidate.value,
        ...saidInData(candidate.value.words, candidate.confidence),
      }),
    );
  return [...saidOnce(inText), ...inData];
}

/** Three sides in one clause are said once, as that clause. */
const saidOnce = (drafts: ClaimDraft[]): ClaimDraft[] =>
  drafts.filter(
    (draft, at) =>
      draft.kind !== 'not-placed' ||
      drafts.findIndex(({ kind, at: { start } }) => kind === draft.kind && start === draft.at.start) === at,
  );
