import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parsePriceText } from '../../src/listing/text/price';

interface Case {
  id: string;
  text: string;
  currency_hint: string | null;
  amount: string | null;
  currency: string | null;
  xfail?: boolean | string;
}

const file = new URL('../../../shared/fixtures/price-parser.json', import.meta.url);

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

describe.skipIf(!existsSync(file))(
  'prices as a published price parser reads them (skipped: not present without ../shared)',
  () => {
    const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { cases: Case[] };
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
