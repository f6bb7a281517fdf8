import { spanHolds } from '../../span';
import type { Rule } from './types';

/** What the listing says of the making, and the date of a code. */
export const claimedDateCode = {
  id: 'claimed-date-code',
  left: 'claimed-date',
  right: 'code',
  informs: (claim, code) =>
    claim.spans.every((said) => code.spans.every((span) => spanHolds(said, span) || spanHolds(span, said))),
} as const satisfies Rule;
