import type { ProblemCode, ProblemData, Within } from '../problem';
import type { Kit } from './kit';

/** What another failure says, within a sentence. */
export type SayWithin = (problem: Within) => string;

type Line<Data> = string | ((data: Data, kit: Kit, say: SayWithin) => string);

/**
 * Failures by their code in one language: what went wrong, and what the user can do. The first may stand within a
 * sentence: it begins small and has no full stop.
 */
export type ProblemWords = {
  [C in ProblemCode]: readonly [what: Line<ProblemData[C]>, remedy: Line<ProblemData[C]>];
};
