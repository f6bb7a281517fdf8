import type { Mark } from './define';

/** Every public mark, in the order in which the screen shows them. A test holds this list complete. */
export const marks: readonly Mark[] = [];
