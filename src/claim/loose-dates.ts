import { spansMeet } from '../span';
import type { ClaimDraft } from './passage';
import type { ClaimOf } from './types';

/** How sure a date of making is of which nothing tells but that it stands by itself. */
export const standingAlone = 0.6;

export interface PlacedDate {
  claim: ClaimDraft;
  /** The same as said of no known thing, where nothing tells of the making but that the date stands by itself. */
  loose: ClaimDraft | null;
}
type Dated = Omit<ClaimOf<'made' | 'bought'>, 'id'>;
const isDated = (claim: ClaimDraft): claim is Dated & ClaimDraft => claim.kind === 'made' || claim.kind === 'bought';

/** Whether a piece made in one span may be what the other is told of: made then as well, or bought then or later. */
const goesWith = ({ span }: Dated, other: Dated): boolean =>
  spansMeet(span, other.kind === 'made' ? other.span : { ...other.span, from: null });

/**
 * A year that only stands by itself is of something else where a date that is surely the piece's does not go with it: it
 * is then said of no known thing, and judges nothing.
 */
export function withoutLoose(dates: readonly PlacedDate[]): ClaimDraft[] {
  const sure = dates
    .map(({ claim }) => claim)
    .filter(isDated)
    .filter(({ confidence }) => confidence > standingAlone);
  return dates.map(({ claim, loose }) =>
    loose !== null && isDated(claim) && !sure.every((other) => goesWith(claim, other)) ? loose : claim,
  );
}
