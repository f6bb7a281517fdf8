import type { Point, Quad } from '../../photo';
import { median, turnedQuad } from '../../photo';
import type { Patch } from './components';

/** Patches that stand like the characters of one line. */
export interface Chain {
  patches: Patch[];
  quad: Quad;
  /** Height of the characters, pixels. */
  height: number;
  /** How much the patches look like one line of characters, higher is better. */
  score: number;
}

const middle = (patch: Patch): Point => ({ x: (patch.x0 + patch.x1) / 2, y: (patch.y0 + patch.y1) / 2 });
const heightOf = (patch: Patch): number => patch.y1 - patch.y0;
const widthOf = (patch: Patch): number => patch.x1 - patch.x0;

/** Lines of at least three characters, turned by at most 30 degrees, best first. */
export function chainsOf(patches: readonly Patch[], image: { width: number; height: number }): Chain[] {
  const characters = patches.filter(
    (patch) =>
      heightOf(patch) >= 9 &&
      heightOf(patch) <= image.height / 2.5 &&
      widthOf(patch) <= heightOf(patch) * 1.8 &&
      widthOf(patch) >= heightOf(patch) * 0.08 &&
      patch.area >= 0.1 * heightOf(patch) * widthOf(patch),
  );
  characters.sort((a, b) => a.x0 - b.x0);
  const chains: Chain[] = [];
  const used = new Set<Patch>();
  for (const [first, start] of characters.entries()) {
    if (used.has(start)) continue;
    const line = growChain(first, characters, used);
    if (line.length < 3) continue;
    for (const patch of line) used.add(patch);
    const chain = chainFrom(line);
    if (chain !== null) chains.push(chain);
  }
  return chains.sort((a, b) => b.score - a.score);
}

/** From a character on, always the nearest next one of like height on the line so far; `characters` stand by x0. */
function growChain(first: number, characters: readonly Patch[], used: ReadonlySet<Patch>): Patch[] {
  const line = [characters[first]!];
  let from = first;
  for (;;) {
    const last = line[line.length - 1]!;
    const height = line.reduce((sum, patch) => sum + heightOf(patch), 0) / line.length;
    const slope = line.length > 1 ? slopeOf(line) : null;
    let best: Patch | null = null;
    let nearest = height * 1.7;
    let found = from;
    for (let at = from + 1; at < characters.length; at++) {
      const patch = characters[at]!;
      const gap = patch.x0 - last.x1;
      if (gap > nearest) break;
      if (used.has(patch) || gap < -0.3 * height) continue;
      if (middle(patch).x <= middle(last).x) continue;
      const ratio = heightOf(patch) / height;
      if (ratio < 0.62 || ratio > 1.6) continue;
      const along = middle(patch).x - middle(last).x;
      const rise = middle(patch).y - middle(last).y;
      const off = Math.abs(rise - (slope ?? 0) * along);
      if (off > height * (slope === null ? 0.35 : 0.3) || Math.abs(rise) > along * 0.7) continue;
      best = patch;
      nearest = gap;
      found = at;
    }
    if (best === null) return line;
    line.push(best);
    from = found;
  }
}

/** Slope of the least-squares line through the patches' middles. */
function slopeOf(line: readonly Patch[]): number {
  const points = line.map(middle);
  const meanX = points.reduce((sum, point) => sum + point.x, 0) / points.length;
  const meanY = points.reduce((sum, point) => sum + point.y, 0) / points.length;
  let across = 0;
  let up = 0;
  for (const point of points) {
    across += (point.x - meanX) ** 2;
    up += (point.x - meanX) * (point.y - meanY);
  }
  return across === 0 ? 0 : up / across;
}

function chainFrom(line: readonly Patch[]): Chain | null {
  const slope = slopeOf(line);
  const degrees = (Math.atan(slope) * 180) / Math.PI;
  if (Math.abs(degrees) > 32) return null;
  const cosine = Math.cos(Math.atan(slope));
  const sine = Math.sin(Math.atan(slope));
  // Along and across the line; a patch's rectangle is upright, so its corners reach a little too far across.
  const along = (point: Point): number => point.x * cosine + point.y * sine;
  const across = (point: Point): number => -point.x * sine + point.y * cosine;
  const heights = line.map((patch) => Math.max(4, heightOf(patch) * cosine - widthOf(patch) * Math.abs(sine)));
  const height = median(heights);
  const rows = line.map((patch) => across(middle(patch)));
  const from = Math.min(...line.map((patch) => along({ x: patch.x0, y: middle(patch).y })));
  const to = Math.max(...line.map((patch) => along({ x: patch.x1, y: middle(patch).y })));
  const row = median(rows);
  const centre = { x: ((from + to) / 2) * cosine - row * sine, y: ((from + to) / 2) * sine + row * cosine };
  const spreadHeight = spread(heights) / height;
  const spreadRow = spread(rows) / height;
  const strength = line.reduce((sum, patch) => sum + patch.strength, 0) / line.reduce((sum, p) => sum + p.area, 0);
  const widths = line.map((patch) => widthOf(patch) / heightOf(patch));
  const score =
    Math.min(line.length, 9) ** 0.8 *
    strength *
    Math.exp(-2.5 * spreadHeight - 4 * spreadRow) *
    (median(widths) > 1.2 ? 0.4 : 1) *
    Math.log2(height);
  return { patches: [...line], quad: turnedQuad(centre, to - from, height, degrees), height, score };
}

/** Median distance from the median, scaled to a deviation. */
function spread(values: readonly number[]): number {
  const centre = median(values);
  return 1.4826 * median(values.map((value) => Math.abs(value - centre)));
}
