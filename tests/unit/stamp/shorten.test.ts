import fc from 'fast-check';
import { expect, it } from 'vitest';
import { shorten } from '../../../src/stamp/shorten';
import { type StampLine, stampLineSchema } from '../../../src/stamp/types';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const step = fc.dictionary(fc.constantFrom('', '0', '1', 'K', 'V'), share).map((raw) => {
  const sum = Object.values(raw).reduce((all, one) => all + one, 0);
  return Object.fromEntries(Object.entries(raw).map(([text, value]) => [text, sum > 1 ? value / sum : value]));
});
const lineOf = (steps: Record<string, number>[]): StampLine => ({
  id: 'p-line-1',
  photoId: 'p',
  quad: [
    { x: 739.4596846315633, y: 450.8001939150068 },
    { x: 747.409981206046, y: 258.3547361381193 },
    { x: 781.7140792960637, y: 259.7719052242922 },
    { x: 773.7637827215808, y: 452.2173630011796 },
  ],
  stampScore: 0.6715714676190347,
  engine: 'net',
  lattice: { steps },
  free: { text: 'KV', probability: 0.123456789 },
  measurements: [{ what: 'pitch', value: 31.23456789, uncertainty: 0.00012345678, unit: 'px' }],
});

it('keeps each probability from a five-thousandth on, to four digits or five decimals, never above it, and each step at no more than 1', () => {
  fc.assert(
    fc.property(fc.array(step), (steps) => {
      const { lattice } = shorten(lineOf(steps));
      for (const [at, short] of lattice.steps.entries()) {
        for (const [text, exact] of Object.entries(steps[at]!)) {
          const value = short[text];
          expect(value === undefined).toBe(exact < 2e-4);
          if (value === undefined) continue;
          expect(value).toBeLessThanOrEqual(exact);
          expect(value).toBeGreaterThan(exact - Math.max(1e-5, exact * 0.001) * 1.001);
        }
        const sum = (of: Record<string, number>) => Object.values(of).reduce((all, one) => all + one, 0);
        expect(sum(short)).toBeLessThanOrEqual(Math.max(sum(steps[at]!), 0) + 1e-12);
      }
    }),
    { seed: 2026 },
  );
});

it('shortens what is told of a line, which stays a line, and changes nothing a second time', () => {
  const line = shorten(lineOf([{ '': 0.9962361317036147, K: 0.00024226658263028062, V: 0.000024226658263028062 }]));
  expect(line).toMatchObject({
    quad: [
      { x: 739.46, y: 450.8 },
      { x: 747.41, y: 258.35 },
      { x: 781.71, y: 259.77 },
      { x: 773.76, y: 452.22 },
    ],
    stampScore: 0.6716,
    lattice: { steps: [{ '': 0.9962, K: 0.00024 }] },
    free: { text: 'KV', probability: 0.1235 },
    measurements: [{ value: 31.23, uncertainty: 0.0001235 }],
  });
  expect(stampLineSchema.parse(line)).toEqual(line);
  expect(shorten(line)).toEqual(line);
});
