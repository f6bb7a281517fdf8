import type { Meaning } from './layout';

/** Adobe's marker says whether colours are YCbCr, which a piece of a TIFF does not. Source: Adobe's Technical Note 5116. */
const adobe = (transform: 0 | 1): number[] => [
  0xff,
  0xee,
  0,
  14,
  ...[65, 100, 111, 98, 101],
  0,
  100,
  0,
  0,
  0,
  0,
  transform,
];

/**
 * A JPEG that stands for itself: a piece of a TIFF lacks the tables that all pieces share, and says nothing of its colours.
 * Source: TIFF Technical Note 2, JPEGTables.
 */
export function wholeJpeg(piece: Uint8Array, tables: readonly number[], meaning: Meaning): Uint8Array<ArrayBuffer> {
  const isColour = meaning === 'rgb' || meaning === 'ycbcr';
  const said = isColour ? adobe(meaning === 'ycbcr' ? 1 : 0) : [];
  // Both begin with a start of their own, and the tables end with an end.
  const shared = tables.slice(2, -2);
  const file = new Uint8Array(2 + said.length + shared.length + Math.max(0, piece.length - 2));
  file.set([0xff, 0xd8]);
  file.set(said, 2);
  file.set(shared, 2 + said.length);
  file.set(piece.subarray(2), 2 + said.length + shared.length);
  return file;
}
