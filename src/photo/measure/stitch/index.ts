import type { Point } from '../../types';
import type { MarkedPhoto } from '../marked-photo';
import type { Measurable, Measure } from '../measure-types';
import { notMeasured } from '../not-measured';
import type { Stitches } from './count';
import { evennessOf, slantOf } from './shape';

type OfStitches = Extract<Measurable, 'count' | 'pitch' | 'evenness' | 'slant'>;

/** A measure of the stitches along a marked line; none where no stitches are told from their ground. */
export function measureStitches(
  what: OfStitches,
  photo: MarkedPhoto,
  points: readonly Point[],
  within: number,
): Measure {
  const [from, to] = [points[0]!, points.at(-1)!];
  const found = photo.stitches(from, to, within);
  const where = { form: 'line' as const, points: found?.ends ?? ([from, to] as [Point, Point]) };
  if (found === null) return notMeasured(what, 'no-stitches', where);
  const measured = measuredAs(what, found);
  return measured === null ? notMeasured(what, 'flat', where) : { what, ...measured, where };
}

function measuredAs(what: OfStitches, found: Stitches): Pick<Measure, 'value' | 'uncertainty' | 'unit'> | null {
  if (what === 'count') return { value: found.count, uncertainty: found.countWithin, unit: 'stitch' };
  if (what === 'pitch') return { value: found.pitch, uncertainty: found.pitchWithin, unit: 'px' };
  if (what === 'evenness') return { ...evennessOf(found), unit: 'share' };
  const slant = slantOf(found);
  return slant && { ...slant, unit: 'degree' };
}
