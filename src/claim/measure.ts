import type { Listing } from '../listing/types';
import { isAboutAnother, parseMeasures } from '../text';
import { type ClaimDraft, foldedRange, type Passage, saidIn, saidInData } from './passage';

/** Measurements of the text, else those of the page's own data. */
export function measureClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) =>
    parseMeasures(from.text, from.language)
      .filter((found) => !isAboutAnother(from.folded.text, ...foldedRange(from, found)))
      .map((found): ClaimDraft => ({ kind: 'measure', measure: found.measure, ...saidIn(from, found, 0.85) })),
  );
  if (inText.length > 0) return inText;
  return listing.measures.map(
    (candidate): ClaimDraft => ({
      kind: 'measure',
      measure: candidate.value,
      ...saidInData(candidate.value.words, candidate.confidence),
    }),
  );
}
