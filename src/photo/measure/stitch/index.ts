import type { Where } from '../../observation-types';
import type { Point } from '../../types';
import type { MarkedPhoto } from '../marked-photo';
import type { Measurable, Measure } from '../measure-types';
import { notMeasured } from '../not-measured';
import type { Stitches } from './count';
import { evennessOf, slantOf } from './shape';
import { skippedIn } from './skipped';

type OfStitches = Extract<Measurable, 'count' | 'pitch' | 'evenness' | 'slant' | 'skipped'>;

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
  if (what === 'skipped') return skippedOf(found, where);
  const measured = measuredAs(what, found);
  return measured === null ? notMeasured(what, 'flat', where) : { what, ...measured, where };
}

/** How many of the stitches that were counted are not there; where, by the holes before and after each gap, two by two. */
function skippedOf(found: Stitches, whole: Where): Measure {
  const told = skippedIn(found.strip, found.holes, found.pitch);
  if (told === null) return notMeasured('skipped', 'not-each', whole);
  const { strip, holes } = found;
  const points = told.places.flat().map((hole) => strip.place(holes[hole]! - strip.before, 0));
  const [from, to] = points;
  const where =
    points.length > 2
      ? { form: 'polygon' as const, points }
      : from && to
        ? { form: 'line' as const, points: [from, to] as [Point, Point] }
        : whole;
  return { what: 'skipped', value: told.missing, uncertainty: told.within, unit: 'stitch', where };
}

function measuredAs(
  what: Exclude<OfStitches, 'skipped'>,
  found: Stitches,
): Pick<Measure, 'value' | 'uncertainty' | 'unit'> | null {
  if (what === 'count') return { value: found.count, uncertainty: found.countWithin, unit: 'stitch' };
  if (what === 'pitch') return { value: found.pitch, uncertainty: found.pitchWithin, unit: 'px' };
  if (what === 'evenness') return { ...evennessOf(found), unit: 'share' };
  const slant = slantOf(found);
  return slant && { ...slant, unit: 'degree' };
}
