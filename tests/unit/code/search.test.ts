import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { isFault, layOut } from '../../../src/code/layout';
import { freeSearch, searchLayout, stepsOf, textOf } from '../../../src/code/search';
import type { Layout } from '../../../src/maker/types';

const seed = 20_251_125;

/** Probability of every text of a lattice by going through all alignments: the definition, not a search. */
function everyText(steps: Record<string, number>[]): Map<string, number> {
  let alignments = new Map<string, number>([['', 1]]);
  for (const step of steps) {
    const next = new Map<string, number>();
    for (const [alignment, probability] of alignments) {
      for (const [character, share] of Object.entries(step)) {
        const longer = alignment + (character === '' ? '_' : character);
        next.set(longer, (next.get(longer) ?? 0) + probability * share);
      }
    }
    alignments = next;
  }
  const texts = new Map<string, number>();
  for (const [alignment, probability] of alignments) {
    const text = alignment.replace(/(.)\1+/g, '$1').replaceAll('_', '');
    texts.set(text, (texts.get(text) ?? 0) + probability);
  }
  return texts;
}

const step = fc
  .dictionary(fc.constantFrom('', '0', '1', '9', 'K'), fc.integer({ min: 1, max: 9 }), { minKeys: 1, maxKeys: 4 })
  .map((weights) => {
    const total = Object.values(weights).reduce((sum, weight) => sum + weight, 0);
    return Object.fromEntries(Object.entries(weights).map(([character, weight]) => [character, weight / total]));
  });
const lattice = fc.array(step, { minLength: 1, maxLength: 6 });

test(`the free search finds every text with its probability (seed ${seed})`, () => {
  fc.assert(
    fc.property(lattice, (steps) => {
      const expected = everyText(steps);
      for (const { text, probability } of freeSearch(stepsOf({ steps }), 5000)) {
        expect(probability).toBeCloseTo(expected.get(text) ?? 0, 9);
        expected.delete(text);
      }
      expect([...expected.values()].every((missed) => missed < 1e-9)).toBe(true);
    }),
    { seed, numRuns: 200 },
  );
});

const layouts: Layout[] = [
  [{ month: 2 }, { year: 1 }],
  [{ year: 'units' }, { month: 'units' }, { year: 'tens' }, { month: 'tens' }],
  [{ literal: 'K', optional: true }, { serial: { min: 1, max: 3 } }],
  [{ serial: { min: 1, max: 3 } }, { check: 'luhn' }],
];

test.each(layouts)(
  `the search under %j finds exactly the texts that fit, each with its probability (seed ${seed})`,
  (...layout) => {
    const laid = layOut(layout as Layout, { plantCodes: [] });
    if (isFault(laid)) throw new Error(laid.fault.kind);
    fc.assert(
      fc.property(lattice, (steps) => {
        const expected = everyText(steps);
        const found = new Map<string, number>();
        for (const { path, probability } of searchLayout(stepsOf({ steps }), laid, { width: 500, keep: 'valid' })) {
          found.set(textOf(path), probability);
          expect(probability, textOf(path)).toBeCloseTo(expected.get(textOf(path)) ?? 0, 9);
        }
        for (const [text, probability] of expected) {
          if (fits(layout as Layout, text) && probability > 1e-9) expect([...found.keys()], text).toContain(text);
        }
      }),
      { seed, numRuns: 200 },
    );
  },
);

/** What fits the four layouts, said once more in another way. */
function fits(layout: Layout, text: string): boolean {
  const luhn = (code: string) =>
    [...code]
      .reverse()
      .reduce((sum, digit, at) => sum + (at % 2 ? [0, 2, 4, 6, 8, 1, 3, 5, 7, 9][Number(digit)]! : Number(digit)), 0) %
      10 ===
    0;
  switch (layouts.findIndex((known) => JSON.stringify(known) === JSON.stringify(layout))) {
    case 0:
      return /^(0[1-9]|1[0-2])[0-9]$/.test(text);
    case 1:
      return /^[0-9]{4}$/.test(text) && /^(0[1-9]|1[0-2])$/.test(`${text[3]}${text[1]}`);
    case 2:
      return /^K?[0-9]{1,3}$/.test(text);
    default:
      return /^[0-9]{2,4}$/.test(text) && luhn(text);
  }
}

test('the usual width finds the best text of a long doubtful stamp', () => {
  const doubtful = [...'KV0915'].map((character, at) => ({ [character]: 0.55, [at < 2 ? 'X' : '8']: 0.3, '': 0.15 }));
  const steps = stepsOf({ steps: doubtful.flatMap((one) => [one, { '': 1 }]) });
  const laid = layOut([{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }], {
    plantCodes: ['KV', 'XX', 'HJ'],
  });
  if (isFault(laid)) throw new Error(laid.fault.kind);
  expect(textOf(searchLayout(steps, laid, { width: 64, keep: 'valid' })[0]!.path)).toBe('KV0915');
});
