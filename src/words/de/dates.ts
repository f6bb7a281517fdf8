import type { ClaimedDate, DatedMark, DatedSaid, PlacedMark } from '../../check';
import type { Span } from '../../span';
import type { Kit } from '../kit';
import { codeShown } from './codes';

/** The words that state a date and, where they are not the same, what they mean. */
export const claimed = ({ words, span }: ClaimedDate, kit: Kit): string =>
  words.includes(kit.span(span)) ? kit.quote(words) : `${kit.quote(words)} (${kit.span(span)})`;

/** "Foto 3 zeigt „Pat. 4,123,456“: ab 1998", with a note when its row is from memory. */
export const markSaid = ({ inText, photo, words, verified, spans }: DatedMark, kit: Kit): string =>
  `${inText ? 'der Text nennt' : `${kit.photo(photo)} zeigt`} ${kit.quote(words)}${verified ? '' : ' (Regel nicht geprüft)'}: ${kit.either(spans.map((one) => kit.span(one)))}`;

/** "Foto 3 zeigt „FABBRICATO IN ITALIA“: Italien" */
export const placedMarkSaid = ({ photo, words, verified, places }: PlacedMark, kit: Kit): string =>
  `${kit.photo(photo)} zeigt ${kit.quote(words)}${verified ? '' : ' (Regel nicht geprüft)'}: ${kit.list(places.map(kit.place))}`;

/** "der Stempel in Foto 1 lautet KV0915 (Januar 1995)" or "als Zeit ist „made in 1994“ genannt" */
export const datedSaid = (dated: DatedSaid, kit: Kit): string =>
  'shown' in dated
    ? `${codeShown(dated.shown, kit)} (${kit.span(dated.date)})`
    : `als Zeit ist ${claimed(dated.claim, kit)} genannt`;

/** "von 1970 bis 1999", of several periods in a row. */
export const periodsSaid = (used: readonly Span[], kit: Kit): string => kit.list(used.map((one) => kit.during(one)));
