import * as text from '../../../src/text';

type Found = { start: number; end: number };
export const now = '2026-11-25';

/** Every reader of words, by the name of what it reads. */
export const readers: Record<string, (said: string, language: string) => readonly Found[]> = {
  price: (said, language) => text.parsePrices(said, { language }),
  measure: (said, language) => text.parseMeasures(said, language),
  date: (said, language) => text.parseDates(said, { language, now }),
  rating: (said) => text.findRatings(said),
  condition: (said) => text.findConditions(said, true),
  'condition in a text': (said) => text.findConditions(said),
  return: (said) => text.findReturns(said),
  shipping: (said) => text.findShipping(said),
  payment: (said) => text.findPayment(said),
  member: (said, language) => text.findMemberSince(said, { language, now }),
  trader: (said) => text.findTraders(said),
  sales: (said) => text.findSalesCounts(said),
  watchers: (said) => text.findWatchers(said),
  bids: (said) => text.findBids(said),
  availability: (said) => text.findAvailability(said),
  code: (said) => text.findItemCodes(said),
};

/** A price, a length and a date in short. */
export const priced = ({ price, words, caveats }: text.FoundPrice) =>
  `“${words}” ${price.kind} ${price.minor}${price.minorTo === undefined ? '' : `–${price.minorTo}`}/${price.exponent} ${price.currencies.join('|')}${price.currency === null ? '?' : ''}${price.otherMinor ? ` or ${price.otherMinor.join(' or ')}` : ''}${caveats.length > 0 ? ` (${caveats.join(', ')})` : ''}`;
export const sized = ({ measure: { dimension, mm, precisionMm, unit }, words }: text.FoundMeasure) =>
  `${dimension} ${mm}±${precisionMm} ${unit} “${words}”`;
export const datedShort = ({ span, form, ambiguous, words }: text.FoundDate) =>
  `${form} ${span.from ?? '…'}/${span.to ?? '…'} ${span.precision}${span.about ? '~' : ''}${ambiguous ? ` or ${ambiguous.map(({ from }) => from).join(', ')}` : ''} “${words}”`;
