import type { Rule } from './types';

/** Two names for the maker. A longer form of a name is the same name. */
export const makers = {
  id: 'makers',
  left: ['maker-name'],
  right: ['maker-name'],
  over: 'quality',
  informs: () => null,
  alike: (one, other) => ` ${one} `.includes(` ${other} `) || ` ${other} `.includes(` ${one} `),
} as const satisfies Rule;
