import { describe, expect, test } from 'vitest';
import { statementOf } from '../../../src/check/changes';
import { findClaims } from '../../../src/claim';
import type { Claim } from '../../../src/claim/types';
import { listingOf } from '../claim/listing-of';
import { ondrasse } from './sample';

const claimed = (kind: Claim['kind'], text: string): Claim => {
  const found = findClaims(listingOf('', text, 'en'), [ondrasse]).find((claim) => claim.kind === kind);
  if (!found) throw new Error(`"${text}" claims no ${kind}`);
  return found;
};

/** A kind, words that state something of it, others that state the same, and others that state something else. */
const rows: [Claim['kind'], string, string, string][] = [
  ['made', 'Made in 1995.', 'This bag was made in 1995.', 'Made in 1996.'],
  ['made', 'Made around 1995.', 'Made about 1995.', 'Made in 1995.'],
  ['bought', 'Bought in 1995.', 'I bought it in 1995.', 'Bought in 1997.'],
  ['origin', 'Made in Italy.', 'It is made in Italy.', 'Made in Belgium.'],
  ['measure', 'Width 30 cm.', 'Width: 30 cm', 'Width 31 cm.'],
  ['measure', 'Width 30 cm.', 'Width 300 mm.', 'Height 30 cm.'],
  ['returns', 'Returns accepted.', 'Returns are accepted.', 'No returns.'],
  ['condition', 'Condition: very good.', 'In very good condition.', 'Never used.'],
];

describe.each(rows)('what a claim of %s states: %s', (kind, one, same, other) => {
  const claim = claimed(kind, one);

  test('is the same wherever it stands, however surely it was read, and in whatever order it is written down', () => {
    const elsewhere = { ...claim, id: 'other', confidence: 0.1, words: 'others', at: { ...claim.at, field: 'title' } };
    expect(statementOf(elsewhere as Claim)).toBe(statementOf(claim));
    const turned = Object.fromEntries(Object.entries(claim).reverse()) as unknown as Claim;
    expect(statementOf(turned)).toBe(statementOf(claim));
  });

  test(`is the same as that of ${same}`, () => expect(statementOf(claimed(kind, same))).toBe(statementOf(claim)));
  test(`is not that of ${other}`, () => expect(statementOf(claimed(kind, other))).not.toBe(statementOf(claim)));
});

test('what says no more than its words states them', () => {
  const worn = claimed('wear', 'Light scratches on the base.');
  expect(statementOf({ ...worn, words: ` ${worn.words.toUpperCase()}` } as Claim)).toBe(statementOf(worn));
  expect(statementOf({ ...worn, words: 'a torn lining' } as Claim)).not.toBe(statementOf(worn));
  expect(statementOf({ ...worn, polarity: 'is-not' } as Claim)).not.toBe(statementOf(worn));
  const { polarity: _, ...hurried } = { ...worn, kind: 'hurry' } as Record<string, unknown>;
  expect(statementOf(hurried as unknown as Claim)).toBe(JSON.stringify(['hurry', worn.words.toLowerCase(), 'is']));
});

test('a price is no statement: it is compared as a sum', () => {
  const price = { value: { kind: 'sale', minor: 54_000, exponent: 2, currency: 'EUR', currencies: ['EUR'] } };
  expect(statementOf({ kind: 'price', id: 'p', words: '540', confidence: 1, ...price } as unknown as Claim)).toBeNull();
});
