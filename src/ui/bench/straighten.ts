import { projectionOnto, type Quad } from '../../photo';
import type { Size } from './view';

/** The style's transform that lays a quad of a picture onto a box from its top left corner; null for a flat quad. */
export function straightening(quad: Quad, { width, height }: Size): string | null {
  const onto = projectionOnto(quad, width, height);
  if (onto === null) return null;
  const [a, b, c, d, e, f, g, h] = onto;
  // The way back, picture → box, as `matrix3d` takes it: column by column, scaled so that its last entry is 1.
  const last = a * e - b * d;
  if (!(Math.abs(last) > 1e-9)) return null;
  const rows = [
    [e - f * h, c * h - b, b * f - c * e],
    [f * g - d, a - c * g, c * d - a * f],
    [d * h - e * g, b * g - a * h, last],
  ].map((row) => row.map((entry) => entry / last));
  const at = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  const columns = [
    [at(0, 0), at(1, 0), 0, at(2, 0)],
    [at(0, 1), at(1, 1), 0, at(2, 1)],
    [0, 0, 1, 0],
    [at(0, 2), at(1, 2), 0, at(2, 2)],
  ];
  return `matrix3d(${columns.flat().join(', ')})`;
}
