export { namesAnothersPiece } from './another';
export { type Availability, findAvailability } from './availability';
export { findBids } from './bids';
export {
  aheadInClause,
  aheadInSentence,
  behindInClause,
  behindInSentence,
  clauseAround,
  clauseBeforeComma,
  isAboutAnother,
  isDenial,
  isNegated,
  isOnlySeeming,
  isSetAgainst,
  rightAhead,
  rightBehind,
  sentenceAround,
} from './clause';
export { findConditions } from './condition';
export { type DateForm, type DateHints, type FoundDate, parseDates } from './date';
export { behindDecade, namedDecade } from './date-words';
export { namedTens, tenNamed } from './decade';
export { anyLanguage, anyWithGaps } from './each-language';
export { lastEnd, withoutEnd } from './ends';
export { type Folded, foldedSet, foldText, foldWords, type Said, sourceRange } from './fold';
export { isOfFormerPart } from './former-part';
export { findItemCodes } from './item-code';
export { japanese, japaneseHouses } from './japanese';
export * as jointWords from './joint-words';
export { befalls, denies, seasonWords, supposes, yearPartWords } from './known-date-words';
export { type Label, labelOf } from './label';
export { splitLabelled } from './label-words';
export { withoutLegends } from './legend';
export { type Lexicon, type Topic, tableWords, topicFinder, topics, wordsOf, wordsWithout } from './lexicon';
export { colourWords, materialWords } from './material-words';
export { type FoundMeasure, parseMeasures } from './measure';
export { dimensionLetters } from './measure-words';
export { findMemberSince } from './member-since';
export { isOfOnePart } from './new-of-else';
export { findPayment } from './payment';
export type { Hit } from './phrases';
export { anyOf, type PhraseTable, phraseFinder, phrasePattern, phraseTest, textPattern } from './phrases';
export { findPlaces, findTownsOfMaking, isPlaceName, type PlaceFound } from './place';
export { plainWords } from './plain-words';
export { isLeftOpen, polarityOf } from './polarity';
export { type FieldPrice, type FoundPrice, type PriceHints, parsePrices, parsePriceText } from './price';
export { type FoundRating, findRatings } from './rating';
export { findReturns, type ReturnTerms } from './returns';
export { findSalesCounts } from './sales-count';
export { findShipping, type ShippingTerms } from './shipping';
export { writtenOut } from './short-forms';
export { sizesInDigits } from './spelled-sizes';
export { countInStock } from './stock';
export { Taken } from './taken';
export { accessoryWords, partWords } from './things';
export { findTraders, isCompanyElsewhere } from './trader';
export { sellersAnswers, sellersOwn } from './voices';
export { findWatchers } from './watchers';
export { yearsAgo } from './years-ago';
