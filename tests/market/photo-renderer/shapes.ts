/** Distance in millimetres to a shape's edge: negative inside. */
export type Distance = (x: number, y: number) => number;

export type Segment = [x0: number, y0: number, x1: number, y1: number];

export function distanceToSegment(x: number, y: number, [x0, y0, x1, y1]: Segment): number {
  const dx = x1 - x0;
  const dy = y1 - y0;
  const length = dx * dx + dy * dy;
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((x - x0) * dx + (y - y0) * dy) / length));
  return Math.hypot(x - x0 - t * dx, y - y0 - t * dy);
}

/** A polygon given as x, y, x, y …, its corners rounded by `radius`. */
export function polygon(points: readonly number[], radius = 0): Distance {
  const corners = points.length / 2;
  return (x, y) => {
    let nearest = Number.POSITIVE_INFINITY;
    let inside = false;
    for (let corner = 0; corner < corners; corner++) {
      const next = (corner + 1) % corners;
      const x0 = points[corner * 2]!;
      const y0 = points[corner * 2 + 1]!;
      const x1 = points[next * 2]!;
      const y1 = points[next * 2 + 1]!;
      nearest = Math.min(nearest, distanceToSegment(x, y, [x0, y0, x1, y1]));
      if (y0 > y !== y1 > y && x < ((x1 - x0) * (y - y0)) / (y1 - y0) + x0) inside = !inside;
    }
    return (inside ? -nearest : nearest) - radius;
  };
}

export function disc(cx: number, cy: number, radius: number): Distance {
  return (x, y) => Math.hypot(x - cx, y - cy) - radius;
}

export function ring(cx: number, cy: number, radius: number, width: number): Distance {
  return (x, y) => Math.abs(Math.hypot(x - cx, y - cy) - radius) - width / 2;
}

export function box(x0: number, y0: number, x1: number, y1: number, radius = 0): Distance {
  const cx = (x0 + x1) / 2;
  const cy = (y0 + y1) / 2;
  const halfWidth = (x1 - x0) / 2 - radius;
  const halfHeight = (y1 - y0) / 2 - radius;
  return (x, y) => {
    const dx = Math.abs(x - cx) - halfWidth;
    const dy = Math.abs(y - cy) - halfHeight;
    return Math.hypot(Math.max(dx, 0), Math.max(dy, 0)) + Math.min(Math.max(dx, dy), 0) - radius;
  };
}

/** Two shapes as one. */
export const union =
  (a: Distance, b: Distance): Distance =>
  (x, y) =>
    Math.min(a(x, y), b(x, y));

/** Points of a polyline x, y, x, y … as its segments. */
export function segmentsOf(points: readonly number[]): Segment[] {
  const segments: Segment[] = [];
  for (let at = 0; at + 3 < points.length; at += 2) {
    segments.push([points[at]!, points[at + 1]!, points[at + 2]!, points[at + 3]!]);
  }
  return segments;
}

/** Cuts a polyline into stitches of `length` with `gap` between them. */
export function stitchesAlong(points: readonly number[], length: number, gap: number): Segment[] {
  const stitches: Segment[] = [];
  for (const [x0, y0, x1, y1] of segmentsOf(points)) {
    const whole = Math.hypot(x1 - x0, y1 - y0);
    const count = Math.floor((whole + gap) / (length + gap));
    const start = (whole - count * (length + gap) + gap) / 2;
    for (let stitch = 0; stitch < count; stitch++) {
      const from = (start + stitch * (length + gap)) / whole;
      const to = from + length / whole;
      stitches.push([x0 + (x1 - x0) * from, y0 + (y1 - y0) * from, x0 + (x1 - x0) * to, y0 + (y1 - y0) * to]);
    }
  }
  return stitches;
}

/** Points of an arch from left foot to right foot, as a handle stands. */
export function arch(left: number, right: number, foot: number, height: number): number[] {
  const points: number[] = [];
  const middle = (left + right) / 2;
  const half = (right - left) / 2;
  for (let step = 0; step <= 40; step++) {
    const angle = Math.PI * (1 - step / 40);
    const squash = Math.sign(Math.cos(angle)) * Math.abs(Math.cos(angle)) ** 0.75;
    points.push(middle + half * squash, foot - height * Math.sin(angle) ** 0.8);
  }
  return points;
}

/**
 * Distance to the nearest of many strokes, less half their width. The strokes are drawn once into a grid of `step`
 * millimetres; beyond `reach` the distance is `reach`.
 */
export function strokesShape(segments: readonly Segment[], width: number, step: number, reach: number): Distance {
  if (segments.length === 0) return () => reach;
  const xs = segments.flatMap(([x0, , x1]) => [x0, x1]);
  const ys = segments.flatMap(([, y0, , y1]) => [y0, y1]);
  const left = Math.min(...xs) - reach;
  const top = Math.min(...ys) - reach;
  const columns = Math.ceil((Math.max(...xs) + reach - left) / step) + 2;
  const rows = Math.ceil((Math.max(...ys) + reach - top) / step) + 2;
  const grid = new Float32Array(columns * rows).fill(reach);
  for (const segment of segments) {
    const [x0, y0, x1, y1] = segment;
    const firstColumn = Math.max(0, Math.floor((Math.min(x0, x1) - reach - left) / step));
    const lastColumn = Math.min(columns - 1, Math.ceil((Math.max(x0, x1) + reach - left) / step));
    const firstRow = Math.max(0, Math.floor((Math.min(y0, y1) - reach - top) / step));
    const lastRow = Math.min(rows - 1, Math.ceil((Math.max(y0, y1) + reach - top) / step));
    for (let row = firstRow; row <= lastRow; row++) {
      for (let column = firstColumn; column <= lastColumn; column++) {
        const distance = distanceToSegment(left + column * step, top + row * step, segment);
        const at = row * columns + column;
        if (distance < grid[at]!) grid[at] = distance;
      }
    }
  }
  return (x, y) => {
    const column = (x - left) / step;
    const row = (y - top) / step;
    if (column < 0 || row < 0 || column >= columns - 1 || row >= rows - 1) return reach - width / 2;
    const c = Math.floor(column);
    const r = Math.floor(row);
    const at = r * columns + c;
    const upper = grid[at]! + (grid[at + 1]! - grid[at]!) * (column - c);
    const lower = grid[at + columns]! + (grid[at + columns + 1]! - grid[at + columns]!) * (column - c);
    return upper + (lower - upper) * (row - r) - width / 2;
  };
}
