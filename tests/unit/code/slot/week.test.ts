import { expect, test } from 'vitest';
import { readUnder } from './under';

test.each([
  ['0195', ['1995-W01']],
  ['5298', ['1998-W52']],
  ['5398', ['1998-W53']],
  ['5397', []],
  ['0097', []],
])('ISO week %s reads %j (53 in long years only)', (code, reads) => {
  expect(readUnder([{ week: 2 }, { year: 2 }], ['1990', '1999'], code)).toEqual(reads);
});

test('weeks counted from the first full week from Sunday to Saturday', () => {
  const layout = [{ week: 2 as const, count: 'first-full-sunday' as const }, { year: 2 as const }];
  expect(readUnder(layout, ['2000', '2019'], '0109')).toEqual(['2009-01-04..2009-01-10']);
  expect(readUnder(layout, ['2000', '2019'], '5309')).toEqual([]);
});
