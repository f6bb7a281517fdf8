import { expect, it } from 'vitest';
import { dollarRange } from '../../../src/evidence/money';

it.each([
  ['USD', 1, 1],
  ['EUR', 0.85, 1.6],
  ['GBP', 1.15, 2.1],
  ['CHF', 0.55, 1.25],
  ['JPY', 0.006, 0.0131],
  ['AUD', 0.5, 1.1],
  ['CAD', 0.62, 1.06],
  ['SEK', 0.085, 0.17],
  ['DKK', 0.115, 0.21],
  ['NOK', 0.09, 0.2],
  ['PLN', 0.2, 0.5],
])('one of %s was worth %f to %f dollars', (currency, least, most) => {
  expect(dollarRange(10, currency)).toEqual([expect.closeTo(10 * least, 9), expect.closeTo(10 * most, 9)]);
  expect(dollarRange(10, currency.toLowerCase())).toBeNull();
});
