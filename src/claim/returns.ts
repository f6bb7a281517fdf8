import type { Listing } from '../listing/types';
import { findReturns } from '../text';
import { type ClaimDraft, isDataTerm, type Passage, saidIn, saidInData } from './passage';

/** Return terms of the text and of the page's own data. */
export function returnsClaims(passages: Passage[], listing: Listing): ClaimDraft[] {
  const inText = passages.flatMap((from) =>
    findReturns(from.text).map(
      (said): ClaimDraft => ({
        kind: 'returns',
        accepted: said.value.accepted,
        ...saidIn(from, said, 0.9),
      }),
    ),
  );
  const data = listing.returns[0];
  if (!data || (data.origin === 'visible' && inText.length > 0)) return inText;
  const { accepted, words } = data.value;
  const said = isDataTerm(words) ? (accepted ? 'returns accepted' : 'no returns') : words;
  return [...inText, { kind: 'returns', accepted, ...saidInData(said, data.confidence) }];
}
