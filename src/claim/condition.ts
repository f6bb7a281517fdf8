import type { Listing } from '../listing/types';
import { findConditions } from '../text';
import { type ClaimDraft, isDataTerm, type Passage, saidIn, saidInData } from './passage';

/** Condition words of the text; the page's own condition field counts as said too. */
export function conditionClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) =>
    findConditions(from.text, from.field === 'title').map(
      (said): ClaimDraft => ({
        kind: 'condition',
        condition: said.value,
        ...saidIn(from, said, 0.9),
      }),
    ),
  );
  const data = listing.condition.filter((candidate) => candidate.origin !== 'visible')[0];
  if (!data) return inText;
  const words = data.words && !isDataTerm(data.words) ? data.words : data.value;
  return [...inText, { kind: 'condition', condition: data.value, ...saidInData(words, data.confidence) }];
}
