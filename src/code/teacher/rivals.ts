import type { Span } from '../../span';
import { readStated } from '../reads';
import { type Explanation, wrongCost } from './explain';

/**
 * Bits that one more wrong example makes: its own agreement and its price. A rival so far behind would be as good if
 * one example were wrong.
 */
export const reachOf = (best: Explanation, codes: number): number => {
  const price = wrongCost(codes, best.wrong.length + 1) - wrongCost(codes, best.wrong.length);
  return price + (Math.max(0, best.score) / Math.max(1, best.explains.length)) * 1.5;
};

/** Whether one explanation says the same as another wherever both read a code, and only less exactly. */
export function isCoarser(readings: readonly (string | null)[], than: readonly (string | null)[]): boolean {
  return readings.every((coarse, at) => {
    const fine = than[at] ?? null;
    return fine === null || (coarse !== null && holds(coarse, fine));
  });
}

/** The dates of a reading in short form; null where it gives none. */
function spansIn(reading: string): Span[] | null {
  const stated = readStated(
    reading
      .split(' or ')
      .map((one) => one.split(',')[0])
      .join(' or '),
  );
  return 'unknown' in stated ? null : stated.spans;
}

function holds(coarse: string, fine: string): boolean {
  if (coarse === fine) return true;
  const [wide, narrow] = [spansIn(coarse), spansIn(fine)];
  if (!wide || !narrow) return false;
  return narrow.every((inner) =>
    wide.some((outer) => (outer.from ?? '') <= (inner.from ?? '') && (inner.to ?? '~') <= (outer.to ?? '~')),
  );
}
