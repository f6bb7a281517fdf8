import { expect, test } from 'vitest';
import { readUnder } from './under';

const used: [string, string] = ['1990', '1999'];

test.each([
  [{ any: 2 }, ['A195', '1195', 'AA95'], ['-A95', 'A95']],
  [{ any: 2, of: 'digit' }, ['1195'], ['A195']],
  [{ any: 2, of: 'letter' }, ['AA95'], ['A195']],
  [{ any: 2, from: 'UJ' }, ['UJ95', 'UU95'], ['UA95']],
] as const)('%j', (slot, fitting, other) => {
  for (const code of fitting) expect(readUnder([slot, { year: 2 }], used, code), code).toEqual(['1995']);
  for (const code of other) expect(readUnder([slot, { year: 2 }], used, code), code).toEqual([]);
});
