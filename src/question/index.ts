export { askQuestions } from './ask';
export { composeMessage, type MessageOptions } from './message';
export type { Question } from './types';
export { avoidedWords } from './wording-avoided';
