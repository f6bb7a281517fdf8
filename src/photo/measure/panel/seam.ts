import type { Point } from '../../types';
import { cropGrey } from '../../warp';
import type { NotMeasured } from '../measure-types';
import { bestMatch, type Cell, foldCell } from './cell';
import { latticeOf, type Step } from './lattice';
import type { Off } from './mirror';
import { intoPanel, type Panel } from './panel';

const leastAlike = 0.5;
/** Repeats on either side of the seam that are looked at: farther off, a small slope would count as a step. */
const nearBy = 2.6;

/** By how much a pattern steps along a seam from its left (or upper) side to its right, shares of the repeat along it. */
export function seamOff(panel: Panel, seam: readonly [Point, Point]): Off | NotMeasured {
  const ends = seam.map((point) => intoPanel(panel, point));
  const [from, to] = ends;
  if (!from || !to) return 'flat';
  const { image } = panel;
  const upright = Math.abs(to.y - from.y) >= Math.abs(to.x - from.x);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 20) return 'small';
  const normal = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
  const sign = (upright ? normal.x : normal.y) >= 0 ? 1 : -1;
  const beyond = (x: number, y: number): number => sign * ((x - from.x) * normal.x + (y - from.y) * normal.y);
  const at = upright ? (from.x + to.x) / 2 : (from.y + to.y) / 2;
  const side = upright ? image.width : image.height;
  const [low, high] = at > side / 2 ? [0, at - 2] : [at + 2, side];
  const larger = upright ? cropGrey(image, low, 0, high, image.height) : cropGrey(image, 0, low, image.width, high);
  const { across, down, staggered } = latticeOf(larger, image);
  if (across === null || down === null) return 'no-repeat';
  const step = upright ? across : down;
  const reach = nearBy * Math.hypot(step.x, step.y);
  const fold = (over: 1 | -1, part: (along: number) => boolean): Cell | null =>
    foldCell(image, across, down, (x, y) => {
      const off = over * beyond(x, y);
      return off > 1.5 && off < reach && part(upright ? y / image.height : x / image.width);
    });
  const every = staggered ? 0.5 : 1;
  const stepped = (part: (along: number) => boolean): number | NotMeasured => {
    const [one, other] = [fold(-1, part), fold(1, part)];
    if (one === null || other === null) return 'small';
    // The second is moved back onto the first: the step is the other way.
    const { u, v, alike } = bestMatch(one, other, 'as-it-is');
    if (alike < leastAlike) return 'not-the-same-pattern';
    const moved = -(upright ? v : u);
    // Where every other row stands aside, a step of half a repeat is the next row's: the smaller step is told.
    return moved - Math.round(moved / every) * every;
  };
  const whole = stepped(() => true);
  if (typeof whole === 'string') return whole;
  const halves = [stepped((along) => along < 0.5), stepped((along) => along >= 0.5)].map((half) =>
    typeof half === 'string' ? null : half - whole - Math.round((half - whole) / every) * every,
  );
  return { value: whole, uncertainty: unsure(halves, step) };
}

function unsure(halves: readonly (number | null)[], { within }: Step): number {
  const known = halves.filter((half) => half !== null);
  const apart = known.length === 2 ? Math.abs(known[0]! - known[1]!) / 2 + Math.abs(known[0]! + known[1]!) / 2 : 0.03;
  return 0.012 + apart + nearBy * Math.min(0.02, within);
}
