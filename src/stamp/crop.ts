import { type GreyImage, type Point, type Quad, quadSize, warpQuad } from '../photo';

/** The quad with `beside` and `above` added around it, in shares of its height. */
export function growQuad(quad: Quad, beside: number, above: number): Quad {
  const { across, down } = quadSize(quad);
  const [a, b, c, d] = quad;
  const unit = (from: Point, to: Point, length: number): Point => ({
    x: (to.x - from.x) / length,
    y: (to.y - from.y) / length,
  });
  const right = unit(a, b, Math.max(1e-6, across));
  const below = unit(a, d, Math.max(1e-6, down));
  const move = (point: Point, x: number, y: number): Point => ({
    x: point.x + (right.x * x + below.x * y) * down,
    y: point.y + (right.y * x + below.y * y) * down,
  });
  return [move(a, -beside, -above), move(b, beside, -above), move(c, beside, above), move(d, -beside, above)];
}

/** The line upright, `height` pixels high, never wider than 24 heights; null when the quad is flat. */
export function cropLine(image: GreyImage, quad: Quad, height: number): GreyImage | null {
  const { across, down } = quadSize(quad);
  if (across < 2 || down < 2) return null;
  const width = Math.max(8, Math.min(24 * height, Math.round((across / down) * height)));
  return warpQuad(image, quad, width, height);
}
