import { type Problem, problem } from '../problem';
import type { PickField } from './pick-types';

/** A choice of the user that this page does not have, or whose words are not of its kind. */
export const pickProblem = (code: 'pick-not-found' | 'pick-unreadable', field: PickField, where: string): Problem =>
  problem(code, where, { field });
