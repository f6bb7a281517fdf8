export { type DateForm, type DateHints, type FoundDate, parseDates } from './date';
export { type Folded, foldText, foldWords, type Said, sourceRange } from './fold';
export { type FoundMeasure, parseMeasures } from './measure';
export { type PhraseTable, phraseFinder, phrasePattern } from './phrases';
export { type FieldPrice, type FoundPrice, type PriceHints, parsePrices, parsePriceText } from './price';
