import fc from 'fast-check';
import { expect, it } from 'vitest';
import { samplesIn, side, written } from '../../../../src/photo/likeness/written';

const count = side * side;
const smooth = Array.from({ length: count }, (_, at) =>
  Math.round(31 + 30 * Math.sin((at % side) / 9) * Math.cos(Math.floor(at / side) / 7)),
);

it('gives back what was written, for even, smooth and wild samples', () => {
  const level = fc.integer({ min: 0, max: 63 });
  const samples = fc.oneof(
    fc.array(level, { minLength: count, maxLength: count }),
    level.map((value) => Array<number>(count).fill(value)),
    fc.tuple(level, level).map(([one, other]) => Array.from({ length: count }, (_, at) => (at % 3 ? one : other))),
  );
  fc.assert(
    fc.property(samples, (told) => {
      expect([...samplesIn(written(told))]).toEqual(told);
    }),
    { seed: 2026, numRuns: 50 },
  );
  expect([...samplesIn(written(smooth))]).toEqual(smooth);
});

it('takes at most two fifths of a digit for each smooth sample', () => {
  expect(written(smooth).length).toBeLessThanOrEqual(0.4 * count);
});

it('reads what older builds wrote, a digit for each sample', () => {
  expect([...samplesIn('AB/'.padEnd(count, 'C'))].slice(0, 4)).toEqual([0, 1, 63, 2]);
});

it.each([
  ['cut off', (text: string) => text.slice(0, 40)],
  ['with strange characters', (text: string) => text.replaceAll('A', '?')],
  ['of ones alone', () => `.${'/'.repeat(400)}`],
  ['of nothing', () => '.'],
])('gives samples of 0 to 63 for one that is %s', (_, spoilt) => {
  const samples = samplesIn(spoilt(written(smooth)));
  expect(samples).toHaveLength(count);
  for (const sample of samples) expect(sample >= 0 && sample <= 63).toBe(true);
});
