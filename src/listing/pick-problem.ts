import type { Problem } from '../problem';
import type { PickField } from './types';

/** A choice of the user that this page does not have, or whose words are not of its kind. */
export const pickProblem = (code: 'pick-not-found' | 'pick-unreadable', field: PickField, where: string): Problem => ({
  code,
  where,
  what:
    code === 'pick-not-found'
      ? `What you pointed at as ${field} on this site is not on this page.`
      : `What you pointed at as ${field} could not be read as one.`,
  remedy: 'Point at it again, or undo the choice for this site.',
});
