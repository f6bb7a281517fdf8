import type { ClaimedDate, DatedMark } from '../../check';
import type { Kit } from '../kit';

/** The words that state a date and, where they are not the same, what they mean. */
export const claimed = ({ words, span }: ClaimedDate, kit: Kit): string =>
  words.includes(kit.span(span)) ? kit.quote(words) : `${kit.quote(words)} (${kit.span(span)})`;

/** "Foto 3 zeigt „Pat. 4,123,456“: ab 1998", with a note when its row is from memory. */
export const markSaid = ({ inText, photo, words, verified, spans }: DatedMark, kit: Kit): string =>
  `${inText ? 'der Text nennt' : `${kit.photo(photo)} zeigt`} ${kit.quote(words)}${verified ? '' : ' (Regel nicht geprüft)'}: ${kit.either(spans.map((one) => kit.span(one)))}`;
