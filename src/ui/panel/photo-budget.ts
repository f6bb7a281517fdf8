import { type Problem, problem } from '../../problem';

/** More photos than this are named as not read. */
export const photoBudget = 24;

export const overBudget = (photoId: string): Problem =>
  problem('over-budget', `photo ${photoId}`, { most: photoBudget });
