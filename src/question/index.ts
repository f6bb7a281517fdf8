export { askQuestions } from './ask';
export { type MessageLanguage, messageLanguageOf, messageLanguages } from './catalogue';
export { composeMessage, type MessageOptions } from './message';
export type { Question } from './types';
export { avoidedWords } from './wording-avoided';
