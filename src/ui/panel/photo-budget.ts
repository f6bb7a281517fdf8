import type { Problem } from '../../problem';

/** More photos than this are named as not read. */
export const photoBudget = 24;

export const overBudget = (photoId: string): Problem => ({
  code: 'over-budget',
  where: `photo ${photoId}`,
  what: `only the first ${photoBudget} photos are read`,
  remedy: 'Type the code by hand if the stamp is in a later photo.',
});
