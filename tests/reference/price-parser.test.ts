import { expect, it } from 'vitest';
import { parsePriceText } from '../../src/text/price';
import { describeWithFixture } from './fixture';

interface Case {
  id: string;
  text: string;
  currency_hint: string | null;
  amount: string | null;
  currency: string | null;
  xfail?: boolean | string;
}

const sameAmount = (a: string | null, b: string | null) =>
  a === null || b === null ? a === b : Number(a) === Number(b);

const misses = (cases: Case[]) =>
  cases
    .map((item) => ({ item, got: parsePriceText(item.text, item.currency_hint) }))
    .filter(({ item, got }) => !sameAmount(got.amount, item.amount) || got.sign !== item.currency)
    .map(
      ({ item, got }) =>
        `${item.text} [${item.currency_hint}] → ${got.amount} ${got.sign}, not ${item.amount} ${item.currency}`,
    );

describeWithFixture<{ cases: Case[] }>(
  'prices as a published price parser reads them',
  'fixtures/price-parser.json',
  ({ cases }) => {
    const known = cases.filter((item) => !('xfail' in item));
    const upstreamFails = cases.filter((item) => 'xfail' in item);

    it('reads amount and currency sign of at least 99% of the cases that its own parser reads', () => {
      const wrong = misses(known);
      expect(wrong.length / known.length, wrong.join('\n')).toBeLessThanOrEqual(0.01);
    });

    it('reads at least half of the cases that its own parser fails', () => {
      const wrong = misses(upstreamFails);
      expect(wrong.length / upstreamFails.length, wrong.join('\n')).toBeLessThanOrEqual(0.5);
    });
  },
);
