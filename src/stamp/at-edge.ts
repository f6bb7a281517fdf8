import { type Point, type Quad, quadSize } from '../photo';

/** Where the next character's middle would stand, in pitches from the last one's, and a tenth for the box's error. */
const nextCharacter = 1.1;
/** A character's width with its air, in heights, where a line is too short to measure its pitch. */
const usualPitch = 0.75;
/** Share of the height by which a corner may lie outside: a box is never framed more exactly. */
const leastOutside = 0.15;

/**
 * Whether a line may go on outside the photo: past one of its ends there is no room in which a further character would
 * be seen, or the photo's edge runs along its characters. `middles` are shares of the quad's width, as `lineAround`
 * gives them.
 */
export function mayGoOn(quad: Quad, middles: readonly number[], photo: { width: number; height: number }): boolean {
  const { across, down } = quadSize(quad);
  if (!(across > 0) || !(down > 0)) return false;
  const outside = ({ x, y }: Point, least: number): boolean =>
    x < -least || y < -least || x > photo.width + least || y > photo.height + least;
  if (quad.some((corner) => outside(corner, leastOutside * down))) return true;
  const [first, last] = [middles[0] ?? 0.5, middles.at(-1) ?? 0.5];
  const measured = middles.length > 1 ? (last - first) / (middles.length - 1) : 0;
  const pitch = Math.max(measured, (0.5 * usualPitch * down) / across);
  const next = nextCharacter * (measured > 0 ? pitch : (usualPitch * down) / across);
  const [a, b, c, d] = quad;
  const start = { x: (a.x + d.x) / 2, y: (a.y + d.y) / 2 };
  const end = { x: (b.x + c.x) / 2, y: (b.y + c.y) / 2 };
  const along = (share: number): Point => ({
    x: start.x + (end.x - start.x) * share,
    y: start.y + (end.y - start.y) * share,
  });
  return outside(along(first - next), 0) || outside(along(last + next), 0);
}
