import { describe, expect, it } from 'vitest';
import { isTold, toldOf } from '../../../src/evidence/told';
import { claimed, coded, marked } from './samples';

describe('whence what agrees is known', () => {
  const nobody = { read: [], seen: [], said: [] };
  const pair = (left: string, right: string, over: 'date' | 'place' = 'date', narrows = true) => ({
    ...{ rule: 'claimed-date-code' as const, over, left, right, withheld: false, relation: 'agrees' as const },
    ...{ hard: false, informs: null, narrows, inside: null, share: null },
  });
  const quoted = coded('quoted', { says: { kind: 'code', from: 'claim', code: 'x', by: [] } });
  const inText = marked('in text', {
    says: { kind: 'mark', inText: true, words: 'x', tells: { kind: 'convention-mark' } },
  });

  it('is read from a stamp, seen on the piece, or said by the seller', () => {
    const all = [coded('code'), quoted, marked('mark'), inText, claimed('year')];
    const met = all.slice(1).map(({ id }) => pair('code', id));
    expect(toldOf(all, met)).toEqual({
      date: { read: ['code'], seen: ['mark'], said: ['quoted', 'in text', 'year'] },
      place: nobody,
    });
  });

  it('counts what another of the set could have excluded, once a fact, over what they meet', () => {
    const all = [claimed('a'), claimed('again', { basis: 'a' }), coded('b'), marked('c')];
    expect(toldOf(all, [pair('a', 'b'), pair('again', 'b')]).date).toEqual({ read: ['b'], seen: [], said: ['a'] });
    expect(toldOf(all, [pair('a', 'b', 'place')])).toEqual({
      date: nobody,
      place: { read: ['b'], seen: [], said: ['a'] },
    });
    expect(toldOf(all, [pair('a', 'b', 'date', false), pair('c', 'elsewhere')]).date).toEqual(nobody);
    expect(toldOf(all, [pair('elsewhere', 'c')]).date).toEqual(nobody);
  });

  it('is told where anybody is named', () => {
    expect(isTold(nobody)).toBe(false);
    expect((['read', 'seen', 'said'] as const).map((one) => isTold({ ...nobody, [one]: ['x'] }))).toEqual([
      true,
      true,
      true,
    ]);
  });
});
