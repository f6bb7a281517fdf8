import type { ProblemWords } from '../problem-words';
import { fileProblems } from './file-problems';
import { listProblems } from './list-problems';
import { pageProblems } from './page-problems';
import { photoProblems } from './photo-problems';
import { programProblems } from './program-problems';

/** Failures in German. */
export const problems: ProblemWords = {
  ...pageProblems,
  ...photoProblems,
  ...programProblems,
  ...fileProblems,
  ...listProblems,
};
