// @vitest-environment jsdom
import { render } from 'preact';
import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { Claims } from '../../../src/ui/parts/Claims';

const code = (id: string, takenBy?: object): Claim =>
  ({
    ...{ kind: 'code', id, code: 'KV 09 15', words: 'KV 09 15', confidence: 0.85 },
    ...{ at: { field: 'description', start: 0, end: 8 }, ...(takenBy ? { takenBy } : {}) },
  }) as Claim;

it('a code in the text says by what it was taken for one, each way once', () => {
  const stamp = { by: 'words', words: 'Stamp inside says' };
  const claims = [code('a', stamp), code('b', stamp), code('c', { by: 'layout', words: 'Ondrasse' }), code('d')];
  const room = document.createElement('div');
  render(<Claims claims={claims} />, room);
  expect(Array.from(room.querySelectorAll('small'), ({ textContent }) => textContent)).toEqual([
    'taken for a code by “Stamp inside says” before it',
    'taken for a code because it fits a layout of Ondrasse',
  ]);
});

it('a sum says what it is, and a currency that may be any of many is left open', () => {
  const price = (kind: string, minor: number, currencies: string[]): Claim =>
    ({
      ...{ kind: 'price', id: kind, words: `${minor}`, confidence: 0.8, at: { field: 'data', start: 0, end: 1 } },
      price: { kind, minor, exponent: 2, currency: currencies.length === 1 ? currencies[0] : null, currencies },
    }) as Claim;
  const room = document.createElement('div');
  const claims = [
    price('sale', 12000, ['USD', 'CAD', 'AUD', 'NZD']),
    price('shipping', 900, ['EUR']),
    price('was', 15000, ['USD', 'CAD', 'AUD']),
  ];
  render(<Claims claims={claims} />, room);
  expect(room.textContent).toContain('120.00, in a currency that the page does not name');
  expect(room.textContent).toContain('postage: 9.00 EUR');
  expect(room.textContent).toContain('before: 150.00 USD, CAD or AUD');
});
