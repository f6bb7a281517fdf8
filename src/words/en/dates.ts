import type { ClaimedDate, DatedMark, DatedSaid, PlacedMark } from '../../check';
import type { Span } from '../../span';
import type { Kit } from '../kit';
import { codeShown } from './codes';

/** The words that state a date and, where they are not the same, what they mean. */
export const claimed = ({ words, span }: ClaimedDate, kit: Kit): string =>
  words.includes(kit.span(span)) ? kit.quote(words) : `${kit.quote(words)} (${kit.span(span)})`;

/** "photo 3 shows “Pat. 4,123,456”: from 1998", with a note when its row is from memory. */
export const markSaid = ({ inText, photo, words, verified, spans }: DatedMark, kit: Kit): string =>
  `${inText ? 'the text names' : `${kit.photo(photo)} shows`} ${kit.quote(words)}${verified ? '' : ' (rule not verified)'}: ${kit.either(spans.map((one) => kit.span(one)))}`;

/** "photo 3 shows “FABBRICATO IN ITALIA”: Italy" */
export const placedMarkSaid = ({ photo, words, verified, places }: PlacedMark, kit: Kit): string =>
  `${kit.photo(photo)} shows ${kit.quote(words)}${verified ? '' : ' (rule not verified)'}: ${kit.list(places.map(kit.place))}`;

/** "the stamp in photo 1 reads KV0915 (January 1995)" or "it is said to be of “made in 1994”" */
export const datedSaid = (dated: DatedSaid, kit: Kit): string =>
  'shown' in dated
    ? `${codeShown(dated.shown, kit)} (${kit.span(dated.date)})`
    : `it is said to be of ${claimed(dated.claim, kit)}`;

/** "from 1970 to 1999", of several periods in a row. */
export const periodsSaid = (used: readonly Span[], kit: Kit): string => kit.list(used.map((one) => kit.during(one)));
