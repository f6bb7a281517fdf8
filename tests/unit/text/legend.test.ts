import { expect, it } from 'vitest';
import { withoutLegends } from '../../../src/text';

/** What of a text is not a legend's, with blanks as one. */
const own = (text: string) => withoutLegends(text).replace(/ +/g, ' ').trim();

it.each([
  ['Grade B. N: new, A: like new, B: used, C: for parts. Brown bag.', 'Grade B. . Brown bag.'],
  ['N fabrikneu · A wie neu · B Gebrauchsspuren · C beschädigt\nBraun', 'Braun'],
  ['5 = ladenneu, 4 = wie neu, 3 = gut', ''],
  ['1: poor, 2: fair, 3: good', ''],
  ['【ランク】AB\nN新品 S未使用 A美品 B使用感あり', '【ランク】AB'],
  ['Nuestros estados: Nuevo / Como nuevo / Bueno. Piel.', 'Nuestros estados . Piel.'],
  // Two letters, letters out of their order, numbers that only count, and labels far apart are none.
  ['A: front, B: back', 'A: front, B: back'],
  ['C: zip, B: strap, A: lining', 'C: zip, B: strap, A: lining'],
  ['3 handles 2 zips 1 lock', '3 handles 2 zips 1 lock'],
  ['5 = boxes, 3 = straps, 1 = lock', '5 = boxes, 3 = straps, 1 = lock'],
  [`A: ${'x'.repeat(90)} B: ${'x'.repeat(90)} C: x`, `A: ${'x'.repeat(90)} B: ${'x'.repeat(90)} C: x`],
])('%s', (text, expected) => {
  expect(own(text)).toBe(expected);
  expect(withoutLegends(text)).toHaveLength(text.length);
});
