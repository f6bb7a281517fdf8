import type { ClaimedDate, DatedMark } from '../../check';
import type { Kit } from '../kit';

/** The words that state a date and, where they are not the same, what they mean. */
export const claimed = ({ words, span }: ClaimedDate, kit: Kit): string =>
  words.includes(kit.span(span)) ? kit.quote(words) : `${kit.quote(words)} (${kit.span(span)})`;

/** "photo 3 shows “Pat. 4,123,456”: from 1998", with a note when its row is from memory. */
export const markSaid = ({ inText, photo, words, verified, spans }: DatedMark, kit: Kit): string =>
  `${inText ? 'the text names' : `${kit.photo(photo)} shows`} ${kit.quote(words)}${verified ? '' : ' (rule not verified)'}: ${kit.either(spans.map((one) => kit.span(one)))}`;
