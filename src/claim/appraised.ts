import { isAboutAnother, isLeftOpen, isNegated, topicFinder } from '../text';
import { detailsOf } from './event-details';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import { isOfAccessory } from './subject';

const find = topicFinder('appraised');

/**
 * That the piece was looked at and valued, and when. Sizes and dates are estimated with the same words: only what names
 * its day is one.
 */
export function appraisedClaims(passages: Passage[], readAt: string): ClaimDraft[] {
  return passages.flatMap((from) =>
    find(from.folded).flatMap((hit): ClaimDraft[] => {
      const [text, start, end] = [from.folded.text, hit.foldedStart, hit.foldedEnd];
      if (isAboutAnother(text, start, end) || isLeftOpen(text, start, end) || isNegated(text, start, end)) return [];
      if (isOfAccessory(text, start, end, from.title)) return [];
      const { by, ...details } = detailsOf(from, start, end, readAt);
      return details.span ? [{ kind: 'appraised', ...details, ...saidIn(from, hit, 0.85) }] : [];
    }),
  );
}
