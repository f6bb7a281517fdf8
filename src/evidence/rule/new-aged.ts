import type { Rule } from './types';

/**
 * What is called new or unused, and a sign of age or use that was measured on a photo. Soft, because the measure is: what
 * lay in a shop for years darkens too.
 */
export const newAged = {
  id: 'new-aged',
  left: ['called-new'],
  right: ['shows-age'],
  over: 'quality',
  informs: () => null,
  hardWhen: () => false,
} as const satisfies Rule;
