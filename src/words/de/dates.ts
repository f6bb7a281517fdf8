import type { ClaimedDate } from '../../check';
import type { Kit } from '../kit';

/** The words that state a date and, where they are not the same, what they mean. */
export const claimed = ({ words, span }: ClaimedDate, kit: Kit): string =>
  words.includes(kit.span(span)) ? kit.quote(words) : `${kit.quote(words)} (${kit.span(span)})`;
