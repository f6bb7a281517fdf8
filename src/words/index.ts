export type { Copies } from './en/screens/copies';
export { type Kit, kitFor } from './kit';
export { type Language, languageFor, spokenLanguages } from './language';
export { languageNames } from './language-names';
export { chooseLanguage, chosenLanguage, kit, onLanguage, type ScreenWords, strings } from './screens';
