import { type Point, type Quad, quadBounds, quadSize } from '../photo';
import { between } from './between';
import { growQuad } from './crop';
import type { Box } from './engines';

interface Size {
  width: number;
  height: number;
}

/**
 * How far from the last character's middle the photo has to reach, in pitches: where most of a next one would be seen, and a
 * tenth for the box's error. Of one that is cut through its last third the recogniser reads nothing. Own measurement: of 90
 * codes that the edge cuts in their last character three passed for whole at 1.1, none at 1.3.
 */
const nextCharacter = 1.3;
/** A character's width with its air, in heights, where a line is too short to measure its pitch. */
const usualPitch = 0.75;
/** Share of the height by which a corner may lie outside: a box is never framed more exactly. */
const leastOutside = 0.15;

/**
 * Whether a line may go on outside the photo: past one of its ends there is no room in which a further character would
 * be seen, or the photo's edge runs along its characters. `middles` are shares of the quad's width, as `lineAround`
 * gives them.
 */
export function mayGoOn(quad: Quad, middles: readonly number[], photo: Size): boolean {
  const { across, down } = quadSize(quad);
  if (!(across > 0) || !(down > 0)) return false;
  const outside = ({ x, y }: Point, least: number): boolean =>
    x < -least || y < -least || x > photo.width + least || y > photo.height + least;
  if (quad.some((corner) => outside(corner, leastOutside * down))) return true;
  const [first, last] = [middles[0] ?? 0.5, middles.at(-1) ?? 0.5];
  const next = reachOfNext(middles, down / across);
  const [a, b, c, d] = quad;
  const start = { x: (a.x + d.x) / 2, y: (a.y + d.y) / 2 };
  const end = { x: (b.x + c.x) / 2, y: (b.y + c.y) / 2 };
  return outside(between(start, end, first - next), 0) || outside(between(start, end, last + next), 0);
}

/**
 * How far past the middles of its outer characters a line has to be seen for one more to show, in the unit of `middles`,
 * of which the line's height is this share.
 */
export function reachOfNext(middles: readonly number[], height: number): number {
  const measured = pitchOf(middles);
  return nextCharacter * (measured > 0 ? Math.max(measured, 0.5 * usualPitch * height) : usualPitch * height);
}

/** A gap this many times as wide as the middle one parts two groups of characters and is no pitch. */
const groupsApart = 1.6;

/** Mean distance from one character's middle to the next within a group; 0 for a lone one. */
function pitchOf(middles: readonly number[]): number {
  const gaps = middles.slice(1).map((middle, at) => middle - middles[at]!);
  if (gaps.length === 0) return 0;
  const middleGap = [...gaps].sort((a, b) => a - b)[gaps.length >> 1]!;
  const within = gaps.filter((gap) => gap <= groupsApart * middleGap);
  return within.reduce((sum, gap) => sum + gap, 0) / within.length;
}

/** Share of a line that a part holds before it is the line that is read there, and not the end of a neighbour. */
const leastHeld = 0.1;

/**
 * Whether a line seen in a photo would no longer be a whole one if that part alone were read: it is cut, or the part ends
 * within a character of it. Not where the line may go on outside the photo itself. `characters` are what it spells.
 */
export function isCutBy(part: Box, { quad, characters }: { quad: Quad; characters: number }, photo: Size): boolean {
  const middles = Array.from({ length: Math.max(1, characters) }, (_, at) => (at + 0.5) / Math.max(1, characters));
  if (mayGoOn(quad, middles, photo) || heldBy(part, quad) < leastHeld) return false;
  const inside = quad.map(({ x, y }) => ({ x: x - part.x0, y: y - part.y0 })) as Quad;
  return mayGoOn(inside, middles, { width: part.x1 - part.x0, height: part.y1 - part.y0 });
}

/** The smallest part that holds both a part and a line, with room for a character at each end of the line. */
export function withWholeLine(part: Box, quad: Quad, photo: Size): Box {
  const { x0, y0, x1, y1 } = quadBounds(growQuad(quad, roomBeside, roomAbove));
  return {
    x0: Math.max(0, Math.min(part.x0, x0)),
    y0: Math.max(0, Math.min(part.y0, y0)),
    x1: Math.min(photo.width, Math.max(part.x1, x1)),
    y1: Math.min(photo.height, Math.max(part.y1, y1)),
  };
}

/** What is taken in beside and above a line, in heights: more than the widest character. */
const roomBeside = 1.5;
const roomAbove = 0.5;

/** Share of a quad's rectangle that lies in a part. */
function heldBy(part: Box, quad: Quad): number {
  const box = quadBounds(quad);
  const across = Math.min(part.x1, box.x1) - Math.max(part.x0, box.x0);
  const down = Math.min(part.y1, box.y1) - Math.max(part.y0, box.y0);
  const area = (box.x1 - box.x0) * (box.y1 - box.y0);
  return across > 0 && down > 0 && area > 0 ? (across * down) / area : 0;
}
