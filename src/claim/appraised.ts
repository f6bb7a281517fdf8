import { isNegated, topicFinder } from '../text';
import { detailsOf } from './event-details';
import type { ClaimDraft, Passage } from './passage';
import { saidWords } from './said-words';

const find = topicFinder('appraised');

/**
 * That the piece was looked at and valued, and when. Sizes and dates are estimated with the same words: only what names
 * its day is one.
 */
export function appraisedClaims(passages: Passage[], readAt: string): ClaimDraft[] {
  return passages.flatMap((from) =>
    saidWords(from, find).flatMap(({ hit: { foldedStart, foldedEnd }, said }): ClaimDraft[] => {
      if (isNegated(from.folded.text, foldedStart, foldedEnd)) return [];
      const { by, ...details } = detailsOf(from, foldedStart, foldedEnd, readAt);
      return details.span ? [{ kind: 'appraised', ...details, ...said }] : [];
    }),
  );
}
