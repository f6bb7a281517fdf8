import { converter, differenceCiede2000 } from 'culori';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { ciede2000 } from '../../src/photo/measure/colour/ciede2000';
import { labOf, lightOf } from '../../src/photo/measure/colour/lab';
import { describeWithFixture } from './fixture';

interface Published {
  pairs: [number, number, number, number, number, number, number][];
  tolerance: number;
}

describeWithFixture<Published>(
  'CIEDE2000 (reference/ciede2000_sharma.json)',
  'reference/ciede2000_sharma.json',
  ({ pairs, tolerance }) => {
    it.each(pairs)('%s %s %s against %s %s %s is %s, both ways', (l1, a1, b1, l2, a2, b2, difference) => {
      expect(Math.abs(ciede2000([l1, a1, b1], [l2, a2, b2]) - difference)).toBeLessThanOrEqual(tolerance);
      expect(Math.abs(ciede2000([l2, a2, b2], [l1, a1, b1]) - difference)).toBeLessThanOrEqual(tolerance);
    });
  },
);

const step = fc.integer({ min: 0, max: 255 });
const lab65 = converter('lab65');
const difference = differenceCiede2000();

it('agrees with culori on L, a and b of any sRGB colour to 0.01', () => {
  fc.assert(
    fc.property(step, step, step, (r, g, b) => {
      const ours = labOf([lightOf(r), lightOf(g), lightOf(b)]);
      const theirs = lab65({ mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 });
      expect(
        Math.max(Math.abs(ours[0] - theirs.l), Math.abs(ours[1] - theirs.a), Math.abs(ours[2] - theirs.b)),
      ).toBeLessThan(0.01);
    }),
    { numRuns: 2000 },
  );
});

it('agrees with culori on the difference of any two colours', () => {
  const lab = fc.tuple(
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.double({ min: -110, max: 110, noNaN: true }),
    fc.double({ min: -110, max: 110, noNaN: true }),
  );
  fc.assert(
    fc.property(lab, lab, (one, other) => {
      const [a, b] = [one, other].map(([l, x, y]) => ({ mode: 'lab65' as const, l, a: x, b: y }));
      expect(ciede2000(one, other)).toBeCloseTo(difference(a!, b!), 6);
    }),
    { numRuns: 2000 },
  );
});
