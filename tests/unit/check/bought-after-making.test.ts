import { describe, expect, it } from 'vitest';
import { boughtAfterMaking } from '../../../src/check/bought-after-making';
import { yearSpan } from '../../../src/span';
import { claim, facts, madeIn, said } from './sample';

describe('bought-after-making', () => {
  const bought = (year: number) => claim('bought', `bought in ${year}`, { span: yearSpan(year) });
  it('doubts a purchase before the making', () => {
    expect(said(boughtAfterMaking, facts({ claims: [madeIn(1995), bought(1990)] }))).toEqual([
      'doubt: The listing says “made in 1995” and “bought in 1990”: bought before it was made.',
    ]);
  });
  it('agrees with a purchase soon after, and is silent on one years later', () => {
    expect(said(boughtAfterMaking, facts({ claims: [madeIn(1995), bought(1996)] }))).toEqual([
      'agreement: The listing says “made in 1995” and “bought in 1996”, which go together.',
    ]);
    expect(said(boughtAfterMaking, facts({ claims: [madeIn(1995), bought(2010)] }))).toEqual(['silent']);
  });
  it('needs both', () => {
    expect(said(boughtAfterMaking, facts({ claims: [madeIn(1995)] }))).toEqual([
      'not-applicable: the listing does not give both a making and a purchase',
    ]);
  });
});
