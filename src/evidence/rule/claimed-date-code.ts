import { spanHolds } from '../../span';
import type { Rule } from './types';

/** What the listing says of making or purchase, and the date of a code. A purchase allows all that is older: no news. */
export const claimedDateCode = {
  id: 'claimed-date-code',
  left: ['claimed-date', 'purchase'],
  right: ['code'],
  over: 'date',
  informs: (claim, code) =>
    claim.says.kind === 'made' &&
    claim.spans.every((said) => code.spans.every((span) => spanHolds(said, span) || spanHolds(span, said)))
      ? 'another-date'
      : null,
  yieldsTo: () => true,
} as const satisfies Rule;
