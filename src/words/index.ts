export type { Copies } from './en/screens/copies';
export { type Kit, kitFor } from './kit';
export { type Language, languageFor, spokenLanguages } from './language';
export { languageNames } from './language-names';
export { composeMessage } from './message/compose';
export { type MessageLanguage, messageLanguageOf, messageLanguages } from './message/languages';
export { describeCheck, sayAsk, sayFinding, sayQuestion, sayReason } from './say';
export type { ScreenWords } from './screen-words';
export { chooseLanguage, chosenLanguage, kit, onLanguage, strings } from './screens';
