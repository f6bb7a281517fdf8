export type { Copies } from './en/screens/copies';
export { type HeadLine, type HeadSaid, sayHead } from './head';
export { type Kit, kitFor } from './kit';
export { type Language, languageFor, spokenLanguages } from './language';
export { languageNames } from './language-names';
export { composeMessage } from './message/compose';
export { type MessageLanguage, messageLanguageOf, messageLanguages } from './message/languages';
export { lengthOf, type MessagePart, splitMessage } from './message/split';
export { partNamer } from './parts';
export { describeCheck, nameOfCheck, sayAsk, sayFinding, sayProblem, sayQuestion, sayReason } from './say';
export {
  sayAgreeing,
  sayConflict,
  sayDates,
  sayExplanation,
  sayStated,
  sayStretch,
  sayTellings,
  sayWeight,
} from './say-evidence';
export { sayExpected, sayFault } from './say-fault';
export { sayKnownFault } from './say-known';
export { sayLayoutPart } from './say-layout';
export { sayCaution, sayMark } from './say-mark';
export { sayPlaceOfCode, sayReadingReason, sayTells } from './say-reading';
export { saySource } from './say-source';
export type { ScreenWords } from './screen-words';
export { chooseLanguage, chosenLanguage, kit, onLanguage, strings } from './screens';
export { readingWords, systemWords } from './shown-reading';
export { systemName } from './system-name';
