import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { freeTexts } from '../../../src/stamp';

type Step = Record<string, number>;

/** Probability of every text, by walking every path: what the search must agree with. */
function everyText(steps: readonly Step[]): Map<string, number> {
  const totals = new Map<string, number>();
  const walk = (at: number, text: string, last: string, probability: number): void => {
    const step = steps[at];
    if (step === undefined) {
      totals.set(text.trim(), (totals.get(text.trim()) ?? 0) + probability);
      return;
    }
    for (const [character, share] of Object.entries(step)) {
      const next = character === '' || character === last ? text : text + character;
      walk(at + 1, next, character, probability * share);
    }
  };
  walk(0, '', '', 1);
  return totals;
}

describe('the text that a lattice spells', () => {
  it('joins a character that goes on, and keeps doubled ones apart by a blank', () => {
    expect(freeTexts({ steps: [{ K: 1 }, { K: 1 }, { '': 1 }, { K: 1 }] })[0]).toEqual({ text: 'KK', probability: 1 });
  });

  it('sums over all ways to stand: the best path alone would choose another text', () => {
    const [best] = freeTexts({
      steps: [
        { A: 0.4, '': 0.6 },
        { A: 0.4, '': 0.6 },
      ],
    });
    expect(best?.text).toBe('A');
    expect(best?.probability).toBeCloseTo(0.64, 6);
  });

  it('says nothing of nothing', () => {
    expect(freeTexts({ steps: [] })).toEqual([{ text: '', probability: 1 }]);
  });

  it('agrees with walking every path', () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    const step = fc.tuple(share, share, share).map(([blank, a, b]): Step => {
      const total = blank + a + b;
      return { '': blank / total, '0': a / total, O: b / total };
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 6 }), (steps) => {
        const all = everyText(steps);
        const found = freeTexts({ steps }, 500, 500);
        for (const { text, probability } of found) expect(probability).toBeCloseTo(all.get(text) ?? 0, 6);
        expect(found[0]?.probability).toBeCloseTo(Math.max(...all.values()), 6);
      }),
    );
  });
});
