import type { MakerProblem } from '../maker';
import { sayProblem } from '../words';

/** What is wrong with a maker file, field by field, in words. */
export const saidProblems = (problems: readonly MakerProblem[]): (MakerProblem & ReturnType<typeof sayProblem>)[] =>
  problems.map((problem) => ({ ...problem, ...sayProblem(problem, 'en') }));
