export { askQuestions } from './ask';
export type { Question } from './types';
