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
