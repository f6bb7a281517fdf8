import { expect, it } from 'vitest';
import { parsePriceText } from '../../src/text/price';
import { describeWithFixture } from './fixture';

interface Case {
  id: string;
  text: string;
  currency_hint: string | null;
  amount: string | null;
  currency: string | null;
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
    // The table of signs comes from CLDR and from what people write, never from these rows.
    it('reads amount and currency sign of at least 92% of all rows', () => {
      const wrong = misses(cases);
      expect(wrong.length / cases.length, wrong.join('\n')).toBeLessThanOrEqual(0.08);
    });
  },
);
