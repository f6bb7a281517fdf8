import { backOf, projectionOnto, type Quad } from '../../photo';
import type { Size } from './view';

/** The style's transform that lays a quad of a picture onto a box from its top left corner; null for a flat quad. */
export function straightening(quad: Quad, { width, height }: Size): string | null {
  const onto = projectionOnto(quad, width, height);
  const back = onto && backOf(onto);
  if (back === null) return null;
  const [a, b, c, d, e, f, g, h] = back;
  // As `matrix3d` takes it: column by column.
  const columns = [
    [a, d, 0, g],
    [b, e, 0, h],
    [0, 0, 1, 0],
    [c, f, 0, 1],
  ];
  return `matrix3d(${columns.flat().join(', ')})`;
}
