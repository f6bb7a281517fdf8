import type { Claim } from '../claim/types';
import { commonPractice } from '../source';
import type { Span } from '../span';
import { fromClaims } from './from-claims';
import { claimedDateCode } from './rule/claimed-date-code';
import { standOf } from './rule/stand';
import type { Dating } from './types';

/** A date that a code may have, as the rule on claimed dates knows it. */
const codeOf = (span: Span): Dating => ({
  id: 'code',
  about: 'date',
  from: { kind: 'reading', id: 'code' },
  basis: 'code',
  spans: [span],
  places: [],
  strength: 'soft',
  says: { kind: 'code', from: 'photo', code: '', by: [] },
  source: commonPractice,
});

/**
 * Whether a way to read a code fits what the seller says of its date: one of the years of making, where any is given, and
 * every purchase, which leaves open all that is older. Null where nothing is said, the reading has no date, or only the
 * room of a loose word joins the two.
 */
export function fitsClaims(span: Span | null, claims: readonly Claim[]): boolean | null {
  if (span === null) return null;
  const relations = (kind: 'made' | 'bought') =>
    fromClaims(claims)
      .filter(({ says }) => says.kind === kind)
      .map((piece) => standOf(claimedDateCode, piece, codeOf(span)).relation);
  const [made, bought] = [relations('made'), relations('bought')];
  if (bought.includes('conflicts')) return false;
  const said = made.length > 0 ? made : bought;
  if (said.includes('agrees')) return true;
  return said.length > 0 && said.every((relation) => relation === 'conflicts') ? false : null;
}
