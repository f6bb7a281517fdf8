import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import type { Decoding } from '../../../src/code/types';
import { ageYears, fromAges, fromStamping } from '../../../src/evidence/from-ages';
import type { MakerFile } from '../../../src/maker/types';
import { monthSpan, type Span, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';
import { claim, decoded, kv0915, ondrasse, reading } from '../check/sample';
import { inFile } from './samples';

const now = '2026-01-15T10:00:00Z';
const plain = { about: 'age', places: [], strength: 'soft' } as const;
const practice = { kind: 'practice', text: 'common practice, no source' } as const;
const inWords = { kind: 'listing', field: 'description' } as const;
const clock = {
  ...plain,
  id: 'today',
  from: { kind: 'clock', id: '2026-01-15' },
  basis: 'today',
  spans: [{ from: null, to: '2026-01-15', precision: 'range' }],
  strength: 'hard',
  says: { kind: 'today', day: '2026-01-15' },
  source: practice,
};

describe('what the day of the look says', () => {
  it('is told whole of each kind of words', () => {
    const claims = [
      claim('bought', 'in 2010', { span: yearSpan(2010) }, 'b'),
      claim('age-word', 'Vintage', { word: 'vintage', polarity: 'is' }, 'v'),
      claim('age-word', 'antique', { word: 'antique', polarity: 'is' }, 'a'),
      claim('fresh-part', 'pale handles', { polarity: 'is' }, 'f'),
    ];
    const said = (id: string, words: string) => ({
      ...{ ...plain, id: `age-${id}`, from: { kind: 'claim', id }, source: inWords },
      by: { field: 'description', words },
    });
    const told = ({ by, ...rest }: ReturnType<typeof said>, basis: string, spans: Span[], says: object) => ({
      ...rest,
      basis,
      spans,
      says: { ...says, ...by },
    });
    expect(fromAges(claims, now)).toEqual([
      clock,
      told(said('b', 'in 2010'), 'purchase-day:b', [yearSpan(2010)], { kind: 'purchase-day' }),
      told(said('v', 'Vintage'), 'age-word:vintage', [yearsSpan(null, 2006)], { kind: 'age-word', word: 'vintage' }),
      told(said('a', 'antique'), 'age-word:antique', [yearsSpan(null, 1926)], { kind: 'age-word', word: 'antique' }),
      told(said('f', 'pale handles'), 'fresh', [yearsSpan(2017, null)], { kind: 'fresh' }),
    ]);
  });

  it('is of no word that is denied', () => {
    const claims = [
      claim('age-word', 'not vintage', { word: 'vintage', polarity: 'is-not' }),
      claim('fresh-part', 'not pale', { polarity: 'is-not' }),
      claim('made', '1994', { span: yearSpan(1994) }),
    ];
    expect(fromAges(claims, now)).toEqual([clock]);
  });

  it.each<[string, Claim, boolean]>([
    ['a part was replaced', claim('replaced', 'r', { parts: ['handle'] }), true],
    ['it was stored', claim('stored', 's', { polarity: 'is' }), true],
    ['it was not stored', claim('stored', 's', { polarity: 'is-not' }), false],
    ['it is new', claim('condition', 'c', { condition: 'new' }), true],
    ['it is unused', claim('condition', 'c', { condition: 'unused' }), true],
    ['it is as new', claim('condition', 'c', { condition: 'as-new' }), false],
  ])('is nothing of a part that is fresh for a reason: %s', (_, why, excused) => {
    const pale = claim('fresh-part', 'pale', { polarity: 'is' }, 'f');
    expect(fromAges([pale, why], now).some(({ says }) => says.kind === 'fresh')).toBe(!excused);
    const old = claim('age-word', 'v', { word: 'vintage', polarity: 'is' }, 'v');
    expect(fromAges([old, why], now)).toHaveLength(2);
  });
});

describe('when a maker stamped', () => {
  const file = { ...inFile, sources: ['ledger'] } as const;
  const stamped = (over: Partial<NonNullable<MakerFile['stamped']>> = {}): MakerFile => ({
    ...ondrasse,
    stamped: { from: '1980', to: '1999', sources: ['ledger'], ...over },
  });
  const near = { from: '1978-12-31', precision: 'range' } as const;

  it('is told whole: its years, that it had begun, and so of each code', () => {
    const of = { ...plain, basis: 'stamping', from: { kind: 'maker-file', id: 'Ondrasse' }, source: file };
    expect(fromStamping([kv0915, decoded('X', [], { id: 'x' })], stamped())).toEqual([
      { ...of, id: 'stamping', spans: [yearsSpan(1980, 1999)], says: { kind: 'stamping', maker: 'Ondrasse' } },
      { ...of, id: 'stamping-begun', spans: [sinceSpan('1980-01-01')], says: { kind: 'stamping', maker: 'Ondrasse' } },
      ...[kv0915, { id: 'x', code: 'X' }].map(({ id, code }) => ({
        ...plain,
        id: `stamped-${id}`,
        from: { kind: 'code', id },
        basis: `stamped:${id}`,
        spans: [sinceSpan('1980-01-01')],
        hardReach: [{ ...near, to: null }],
        strength: 'hard',
        says: { kind: 'stamped', code, maker: 'Ondrasse' },
        source: file,
      })),
    ]);
  });

  it('is of a code as its best reading has it, and as surely as it is seen and the file says', () => {
    const strength = (decoding: Decoding, over: Parameters<typeof stamped>[0] = {}) =>
      fromStamping([decoding], stamped(over)).flatMap(({ says, strength }) =>
        says.kind === 'stamped' ? [`${says.code} ${strength}`] : [],
      );
    const misread = decoded('KVO915', [reading('KV0915', monthSpan(1995, 1))]);
    expect(strength(misread)).toEqual(['KV0915 hard']);
    expect(strength({ ...misread, from: { kind: 'typed' } })).toEqual(['KV0915 hard']);
    expect(strength({ ...misread, from: { kind: 'claim', claimId: 'c' } })).toEqual(['KV0915 soft']);
    expect(strength(misread, { strength: 'soft' })).toEqual(['KV0915 soft']);
    expect(strength({ ...misread, accepted: false })).toEqual([]);
  });

  it('counts its exceptions, of whatever model they are', () => {
    const exceptions = [{ models: ['Satchel'], used: ['1970', '1972'] as [string, string], what: 'a trial' }];
    expect(fromStamping([kv0915], stamped({ exceptions })).map(({ spans }) => spans)).toEqual([
      [yearsSpan(1980, 1999), yearsSpan(1970, 1972)],
      [sinceSpan('1980-01-01'), yearsSpan(1970, 1972)],
      [sinceSpan('1980-01-01'), yearsSpan(1970, 1972)],
    ]);
  });

  it('is told of no file, of none that does not say, and of none whose days do not exist', () => {
    const { stamped: _, ...silent } = ondrasse;
    expect(fromStamping([kv0915], null)).toEqual([]);
    expect(fromStamping([kv0915], silent)).toEqual([]);
    expect(fromStamping([kv0915], stamped({ from: '1980-13' }))).toEqual([]);
    const { sources: _none, ...unsourced } = stamped().stamped!;
    expect(fromStamping([], { ...ondrasse, stamped: unsourced })[0]?.source).toEqual({ ...file, sources: [] });
  });
});

it('an age is counted from the latest day that the dates allow', () => {
  expect(ageYears([yearSpan(1994)], now)).toBe(32);
  expect(ageYears([yearsSpan(1994, 1999), yearSpan(1990)], now)).toBe(27);
  expect(ageYears([yearsSpan(1994, null)], now)).toBe(0);
  expect(ageYears([yearSpan(1990), yearsSpan(1994, null)], now)).toBe(0);
});
