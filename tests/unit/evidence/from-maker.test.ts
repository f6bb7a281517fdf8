import { describe, expect, it } from 'vitest';
import type { Claim, Part } from '../../../src/claim/types';
import { fromMaker } from '../../../src/evidence/from-maker';
import type { Run } from '../../../src/maker/types';
import { yearsSpan } from '../../../src/span';
import { claim } from '../check/sample';
import { file, model, type Row, told, years } from './called-up';
import { inFile } from './samples';

const material = (material: string, part: Part = 'lining', words = material, id = 'm') =>
  claim('material', words, { part, material }, id);

describe('a material that the words name', () => {
  const twill: Row = { is: 'olive twill', also: ['green twill'], not: ['blue silk'], sources: ['ledger'] };
  const source = { ...inFile, sources: ['ledger'] } as const;

  it('is told whole: by the years in which the maker used it', () => {
    expect(fromMaker([material('Green Twill', 'lining', 'Green Twill lining')], file([twill]))).toEqual([
      {
        id: 'construction-m',
        about: 'date',
        from: { kind: 'construction', id: 'm' },
        basis: 'material:lining:olive twill',
        spans: [yearsSpan(1990, 1995)],
        hardReach: [{ from: '1988-12-31', to: '1996-12-31', precision: 'range' }],
        places: [],
        strength: 'hard',
        says: {
          ...{ kind: 'material', field: 'description', words: 'Green Twill lining', maker: 'Ondrasse' },
          part: 'lining',
          is: ['olive twill'],
        },
        source,
      },
    ]);
  });

  it('is told whole where it is another one: by the years in which the maker used none of it', () => {
    expect(fromMaker([material('blue silk')], file([twill]))).toEqual([
      {
        id: 'construction-m',
        about: 'date',
        from: { kind: 'construction', id: 'm' },
        basis: 'material:lining:blue silk',
        spans: [yearsSpan(null, 1989), yearsSpan(1996, null)],
        hardReach: [
          { from: null, to: '1991-01-01', precision: 'range' },
          { from: '1994-12-31', to: null, precision: 'range' },
        ],
        places: [],
        strength: 'hard',
        says: {
          ...{ kind: 'other-material', field: 'description', words: 'blue silk', maker: 'Ondrasse' },
          part: 'lining',
          is: ['olive twill'],
          used: [yearsSpan(1990, 1995)],
        },
        source,
      },
    ]);
  });

  it('is found as whole words, among others', () => {
    expect(told([material('fine olive twill weave')], file([twill]))).toHaveLength(1);
    expect(told([material('olive twills')], file([twill]))).toEqual([]);
    expect(told([material('twill')], file([twill]))).toEqual([]);
  });

  it('is of any years of the rows that name it, and of none that exclude it', () => {
    const rows: Row[] = [
      { is: 'twill', not: ['silk twill'], used: ['1990', '1992'], sources: ['a'] },
      { is: 'silk twill', used: ['2000', '2001'], sources: ['b'] },
      { is: 'silk', used: ['2003', '2004'], sources: ['a', 'c'], strength: 'soft' },
    ];
    const [piece] = fromMaker([material('silk twill')], file(rows));
    expect(piece).toMatchObject({
      spans: [yearsSpan(2000, 2001), yearsSpan(2003, 2004)],
      strength: 'soft',
      says: { is: ['silk twill', 'silk'] },
      source: { sources: ['b', 'a', 'c'] },
    });
    expect(told([material('twill')], file(rows))).toEqual(['construction-m material 1990-1992 hard']);
  });

  it('tells nothing where a row both names and excludes it, nor where no row speaks of it', () => {
    expect(told([material('silk twill')], file([{ is: 'twill', not: ['silk'] }]))).toEqual([]);
    expect(told([material('silk')], file([{ is: 'twill' }]))).toEqual([]);
    expect(told([material('silk')], file([{ is: 'twill', not: ['suede'] }]))).toEqual([]);
    expect(told([material('twill', 'zip')], file([{ is: 'twill' }]))).toEqual([]);
  });

  it('may be of the years of a row that is silent on it', () => {
    const rows: Row[] = [
      { is: 'twill', not: ['silk'], used: ['1990', '1995'] },
      { is: 'suede', used: ['1994', '1999'] },
    ];
    expect(told([material('silk')], file(rows))).toEqual(['construction-m other-material -1989,1994- hard']);
    // All years are silent on it, or some row is of all.
    expect(told([material('silk')], file([...rows, { is: 'felt', used: ['unknown', null] }]))).toEqual([]);
  });

  it('was never used where all years exclude it, which dates nothing', () => {
    expect(told([material('silk')], file([{ is: 'twill', not: ['silk'], used: ['unknown', null] }]))).toEqual([]);
  });

  it('is of about the years that a file hedges, outside them as well', () => {
    const hedged: Row = { is: 'twill', not: ['silk'], used: ['about 1990', '1995'] };
    expect(told([material('twill')], file([hedged]))).toEqual(['construction-m material 1990-1995~ soft']);
    expect(told([material('silk')], file([hedged]))).toEqual(['construction-m other-material -1989~,1996-~ soft']);
  });

  it('is of no date in a row of any date, and of none whose days do not exist', () => {
    expect(told([material('twill')], file([{ is: 'twill', used: ['unknown', null] }]))).toEqual([]);
    expect(told([material('twill')], file([{ is: 'twill', used: ['1990-13', null] }]))).toEqual([]);
    expect(told([material('twill')], file([{ is: 'twill', used: ['1990', null] }]))).toEqual([
      'construction-m material 1990- hard',
    ]);
    expect(told([material('twill')], file([{ is: 'twill', used: ['unknown', '1990'] }]))).toEqual([
      'construction-m material -1990 hard',
    ]);
  });

  it('is soft by habit, where it is disputed, and where the file does not say', () => {
    const of = (over: Partial<Row>) =>
      told([material('twill')], file([{ is: 'twill', ...over }]))[0]
        ?.split(' ')
        .at(-1);
    expect(of({ strength: 'soft' })).toBe('soft');
    expect(of({ standing: { is: 'disputed' } })).toBe('soft');
    expect(of({ strength: undefined })).toBe('soft');
    expect(of({})).toBe('hard');
  });

  it('is of the rows of its model, of every model, and of no exception', () => {
    const only = (over: Partial<Row>, ...claims: Claim[]) =>
      told([material('twill'), ...claims], file([{ is: 'twill', ...over }], { models })).filter((one) =>
        one.startsWith('construction'),
      );
    const models = [{ name: 'Satchel' }, { name: 'Carryall 30', aliases: ['Carry'] }];
    expect(only({ models: ['satchel'] })).toEqual([]);
    expect(only({ models: ['satchel'] }, model('Satchel'))).toHaveLength(1);
    expect(only({ models: ['satchel'] }, model('Carryall 30'))).toEqual([]);
    expect(only({ models: ['Carryall 30'] }, model('my carry bag'))).toHaveLength(1);
    expect(only({ models: [] })).toHaveLength(1);
    const exceptions = [{ what: 'x', models: ['Satchel'] }];
    expect(only({ exceptions })).toHaveLength(1);
    expect(only({ exceptions }, model('Carryall 30'))).toHaveLength(1);
    expect(only({ exceptions }, model('Satchel'))).toEqual([]);
    const years = [{ what: 'x', models: ['Satchel'], used: ['2001', '2002'] as [string, string] }];
    expect(only({ exceptions: years }, model('Satchel'))).toEqual(['construction-m material 1990-1995,2001-2002 hard']);
    expect(only({ exceptions: years }, model('Carryall 30'))).toEqual(['construction-m material 1990-1995 hard']);
  });

  it('is of a finer part where the words name it, by the file’s id or its words for it', () => {
    const maker = file(
      [
        { part: 'hardware', is: 'brass', used: ['1980', '1985'] },
        { part: 'turn-lock', is: 'brass', used: ['1990', '1995'] },
        { part: 'feet', is: 'brass', used: ['2000', '2001'] },
      ],
      {
        parts: [
          { id: 'turn-lock', words: ['clasp'] },
          { id: 'feet', words: ['studs'] },
        ],
      },
    );
    const of = (words: string) =>
      fromMaker([material('brass', 'hardware', words)], maker).map(({ says, spans, basis }) =>
        [basis, 'part' in says && says.part, years(spans)].join(' '),
      );
    expect(of('brass hardware')).toEqual(['material:hardware:brass hardware 1980-1985']);
    expect(of('brass turn lock')).toEqual(['material:hardware:brass turn-lock 1990-1995']);
    expect(of('brass turn-lock')).toEqual(['material:hardware:brass turn-lock 1990-1995']);
    expect(of('brass clasp')).toEqual(['material:hardware:brass turn-lock 1990-1995']);
    expect(of('brass clasps')).toEqual(['material:hardware:brass hardware 1980-1985']);
    expect(of('brass studs')).toEqual(['material:hardware:brass feet 2000-2001']);
  });

  it('of a part that was replaced dates that part only, and of a piece restored nothing for sure', () => {
    const replaced = (...parts: Part[]) => claim('replaced', 'r', { parts });
    const maker = file([twill]);
    expect(fromMaker([material('green twill'), replaced('zip', 'lining')], maker)).toEqual([
      {
        id: 'construction-m',
        about: 'age',
        from: { kind: 'claim', id: 'm' },
        basis: 'later-material:lining:olive twill',
        spans: [yearsSpan(1990, 1995)],
        places: [],
        strength: 'soft',
        source,
        says: {
          ...{ kind: 'later-material', field: 'description', words: 'green twill', maker: 'Ondrasse', part: 'lining' },
          ...{ is: ['olive twill'], used: [yearsSpan(1990, 1995)], other: false },
        },
      },
    ]);
    const [other] = fromMaker([material('blue silk'), replaced('lining')], maker);
    expect(other).toMatchObject({
      spans: [yearsSpan(null, 1989), yearsSpan(1996, null)],
      says: { kind: 'later-material', used: [yearsSpan(1990, 1995)], other: true },
    });
    expect(told([material('green twill'), replaced('zip')], maker)).toEqual(['construction-m material 1990-1995 hard']);
    expect(told([material('green twill'), replaced()], maker)).toEqual(['construction-m material 1990-1995 soft']);
  });

  it('of an edition, a re-issue or a collaboration that the words name dates nothing for sure', () => {
    const runs: Run[] = [{ kind: 'edition', name: 'Harbour Edition', made: ['1990', '1991'] }];
    const maker = file([twill], { models: [{ name: 'Satchel', runs }] });
    const of = (...words: string[]) => told([material('green twill'), model('Satchel')], maker, words)[0];
    expect(of()).toBe('construction-m material 1990-1995 hard');
    expect(of('Satchel', 'the Harbour Edition of 1990')).toBe('construction-m material 1990-1995 soft');
    const own = file([{ ...twill, models: ['harbour edition'] }], { models: [{ name: 'Satchel', runs }] });
    expect(told([material('green twill'), model('Satchel')], own, ['Harbour Edition'])[0]).toBe(
      'construction-m material 1990-1995 soft',
    );
  });

  it('is told of no file', () => {
    expect(fromMaker([material('twill'), model('Satchel')], null)).toEqual([]);
  });
});
