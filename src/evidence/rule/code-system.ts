import type { Rule } from './types';

/** The date of a code, and the time in which its own system was in use. */
export const codeSystem = {
  id: 'code-system',
  left: ['code'],
  right: ['system'],
  over: 'date',
  informs: () => null,
  ofOneCode: 'system',
  evenImpossible: true,
} as const satisfies Rule;
