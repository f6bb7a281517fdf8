import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1970', '2030'];

/** Published worked examples; sources beside the arithmetic in check-character.ts. */
test.each([
  ['luhn', '79927398713', '79927398710'],
  ['mod10', '6291041500213', '6291041500214'],
  ['mod11', '0306406152', '0306406153'],
  ['mod11', '316148410X', '3161484101'],
  ['iso6346', 'CSQU3054383', 'CSQU3054384'],
  // ISO 7064 MOD 97-10: 794 is followed by 44.
  ['mod97', '79444', '79454'],
] as const)('%s accepts %s and refuses %s', (check, right, wrong) => {
  const width = check === 'mod97' ? 2 : 1;
  const layout = [{ any: right.length - width }, { check }];
  expect(readUnder(layout, used, right)).toEqual(['undated']);
  expect(readUnder(layout, used, wrong)).toEqual([]);
});

test('weights are in order when as many as characters, else repeated from the last', () => {
  // 1·1 + 2·2 + 3·3 = 14, so 6; and 1·3 + 2·1 + 3·3 = 14 with 3, 1 from the right.
  expect(readUnder([{ any: 3 }, { check: 'mod10', weights: [1, 2, 3] }], used, '1236')).toEqual(['undated']);
  expect(readUnder([{ any: 3 }, { check: 'mod10', weights: [3, 1] }], used, '1236')).toEqual(['undated']);
  expect(readUnder([{ any: 3 }, { check: 'mod10', weights: [1, 2, 3] }], used, '1237')).toEqual([]);
});

test('separators do not count, and a check may stand before what it covers', () => {
  expect(readUnder([{ any: 3 }, { separator: '-' }, { check: 'mod10' }], used, '123-6')).toEqual(['undated']);
  expect(readUnder([{ check: 'mod10', over: 'all' }, { any: 3 }], used, '6123')).toEqual(['undated']);
});

test('a character without a value in the rule does not fit', () => {
  expect(readUnder([{ any: 8 }, { check: 'vin' }, { any: 8 }], used, '11111111111111111')).toEqual(['undated']);
  expect(readUnder([{ any: 8 }, { check: 'vin' }, { any: 8 }], used, 'O1111111111111111')).toEqual([]);
});
