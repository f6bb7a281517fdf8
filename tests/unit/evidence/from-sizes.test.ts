import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import type { Measure } from '../../../src/listing/types';
import type { MakerFile, Run } from '../../../src/maker/types';
import { type Span, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';
import { claim, measureOf, stated } from '../check/sample';
import { inFile } from './samples';
import { file, modelOf, of, page, type Side, size, told } from './sized';

const plain = { spans: [], places: [], strength: 'soft' } as const;
const onPage = { kind: 'listing', field: 'measures' } as const;
const measured = (side: Measure['dimension'], mm: number, id = `c-${side}-${mm}`): Claim =>
  claim('measure', `${mm} mm`, { measure: measureOf(side, mm, `${mm} mm`) }, id);
/** The sides that are stated, in order. */
const sides = (...given: Parameters<typeof of>) =>
  of(...given).flatMap(({ says }) => (says.kind === 'size' ? [`${says.side} ${says.mm}`] : []));

describe('what is said of the size', () => {
  const carryall = modelOf('Carryall 30', size(30, 21), {}, { sources: ['ledger'] });

  it('is told whole: a length of the page, one of the words, and those of the model', () => {
    const listing = page('Carryall 30', ['width', 305, 5]);
    expect(of(listing, file(carryall), [measured('height', 210, 'c')])).toEqual([
      {
        ...plain,
        id: 'size-read-0',
        about: 'size',
        from: { kind: 'listing', id: 'read-0' },
        basis: 'size:width:305/5',
        amounts: [{ of: 'width', unit: 'mm', least: 295, most: 315 }],
        says: { kind: 'size', side: 'width', mm: 305, precisionMm: 5, words: '305 mm' },
        source: onPage,
      },
      {
        ...plain,
        id: 'size-c',
        about: 'size',
        from: { kind: 'claim', id: 'c' },
        basis: 'size:height:210/5',
        amounts: [{ of: 'height', unit: 'mm', least: 200, most: 220 }],
        says: { kind: 'size', side: 'height', mm: 210, precisionMm: 5, words: '210 mm' },
        source: onPage,
      },
      ...(['width', 'height'] as const).map((side) => ({
        ...plain,
        id: `model-size-${side}`,
        about: 'size',
        from: { kind: 'maker-file', id: 'Carryall 30' },
        basis: `model-size:${side}`,
        amounts: [
          { of: side, unit: 'mm', ...(side === 'width' ? { least: 290, most: 310 } : { least: 200, most: 220 }) },
        ],
        says: { kind: 'model-size', side, mm: side === 'width' ? 300 : 210, model: 'Carryall 30' },
        source: { ...inFile, sources: ['ledger'] },
      })),
    ]);
  });

  it('is told whole of the number in a name and of the proportions of a family', () => {
    const family = [modelOf('Carryall 30', size(30, 20)), modelOf('Carryall 35', size(35, 25, 20))];
    const listing = page('Carryall 45', ['width', 450, 5], ['height', 300, 5]);
    const [, , named, proportion, ofFamily] = of({ ...listing, model: stated('Carryall 45') }, file(...family));
    expect(named).toEqual({
      ...plain,
      id: 'named-width',
      about: 'size',
      from: { kind: 'listing', id: 'Carryall 45' },
      basis: 'named-width',
      amounts: [{ of: 'width', unit: 'mm', least: 425, most: 475 }],
      says: { kind: 'named-width', name: 'Carryall 45', number: 45 },
      source: { kind: 'practice', text: 'common practice, no source' },
    });
    expect(proportion).toEqual({
      ...plain,
      id: 'proportion-width:height',
      about: 'value',
      from: { kind: 'listing', id: 'width:height' },
      basis: 'proportion:width:height',
      amounts: [{ of: 'width:height', unit: 'ratio', least: 440 / 310, most: 460 / 290 }],
      says: { kind: 'proportion', one: { side: 'width', mm: 450 }, other: { side: 'height', mm: 300 } },
      source: onPage,
    });
    expect(ofFamily).toEqual({
      ...plain,
      id: 'family-proportion-width:height',
      about: 'value',
      from: { kind: 'maker-file', id: 'width:height' },
      basis: 'family-proportion:width:height',
      amounts: [
        { of: 'width:height', unit: 'ratio', least: expect.closeTo(1.4 * 0.8, 9), most: expect.closeTo(1.5 * 1.2, 9) },
      ],
      says: { kind: 'family-proportion', models: ['Carryall 30', 'Carryall 35'], least: 1.4, most: 1.5 },
      source: { ...inFile, sources: [] },
    });
  });

  it('holds every two sides of a family that it has, and a side of nothing against none', () => {
    const family = file(modelOf('Carryall 30', size(30, 20)), modelOf('Carryall 35', size(35, 25, 20)));
    const ids = (...some: Side[]) => told(page('Carryall 45', ...some), family).map((one) => one.split(': ')[0]);
    expect(ids(['width', 450], ['height', 300], ['depth', 200]).slice(3)).toEqual([
      'proportion-width:height',
      'family-proportion-width:height',
      'proportion-width:depth',
      'family-proportion-width:depth',
      'proportion-height:depth',
      'family-proportion-height:depth',
    ]);
    const flat = file(modelOf('Carryall 30', size(30, 20)));
    expect(told(page('Carryall 45', ['width', 450], ['depth', 200]), flat)).toHaveLength(2);
    const tiny = told(page('Carryall 45', ['width', 450, 1], ['height', 4, 1]), flat);
    // No side is shorter than a millimetre, however coarse the tape.
    expect(tiny[2]).toBe('proportion-width:height: width:height 44.4–456');
  });

  it('is of no handle and of no side that nobody names where some side is named', () => {
    const some: Side[] = [
      ['handle', 120],
      ['strap', 900],
      ['width', 300],
      ['unknown', 210],
      ['unknown', 170],
    ];
    expect(sides(page('Tote', ...some), null)).toEqual(['strap 900', 'width 300']);
    expect(sides(page('Tote', ['handle', 120], ['strap', 900], ['unknown', 300], ['unknown', 210]), null)).toEqual([
      'strap 900',
      'width 300',
      'height 210',
    ]);
  });

  it('is a row of two or three, of the page or else of the words', () => {
    const row = (...mm: number[]) => mm.map((one): Side => ['unknown', one]);
    expect(sides(page('Tote', ...row(300)), null)).toEqual([]);
    expect(sides(page('Tote', ...row(300, 210)), null)).toEqual(['width 300', 'height 210']);
    expect(sides(page('Tote', ...row(300, 210, 170, 90)), null)).toEqual(['width 300', 'height 210', 'depth 170']);
    const claims = [measured('unknown', 400), measured('unknown', 250)];
    expect(sides(page('Tote', ...row(300)), null, claims)).toEqual(['width 400', 'height 250']);
    expect(sides(page('Tote', ...row(300, 210)), null, claims)).toEqual(['width 300', 'height 210']);
    expect(sides(page('Tote', ...row(300, 210)), null, [measured('width', 310)])).toEqual(['width 310']);
  });

  it('takes a row in the order that fits the number of a name, where no size is known', () => {
    const row: Side[] = [
      ['unknown', 210],
      ['unknown', 400],
    ];
    const named = (name: string, maker: MakerFile | null) =>
      sides({ ...page(name, ...row), model: stated(name) }, maker);
    expect(named('Weekender 40', null)).toEqual(['height 210', 'width 400']);
    expect(named('Weekender', null)).toEqual(['width 210', 'height 400']);
    expect(named('Weekender 21', null)).toEqual(['width 210', 'height 400']);
  });

  it('takes of several sizes of one model the one that fits best, the first of equals', () => {
    const runs: Run[] = [
      { size: size(30, 21), made: ['1990', '1995'] },
      { size: size(32, 21), made: ['1996', '1999'] },
      { size: size(40, 21), made: ['2000', '2005'] },
    ];
    const satchel = file({ name: 'Satchel', runs });
    const width = (mm: number, dates: Span[] = []) =>
      of(page('Satchel', ['width', mm], ['strap', 900]), satchel, [], dates).flatMap(({ says }) =>
        says.kind === 'model-size' && says.side === 'width' ? [says.mm] : [],
      );
    // 31 cm is within the centimetre of both, 33.5 is nearer to the second and 36.1 to the third.
    expect([300, 310, 312, 335, 360, 361].map((mm) => width(mm)[0])).toEqual([300, 300, 320, 320, 320, 400]);
    expect(width(300, [yearSpan(2003)])).toEqual([400]);
    expect(width(400, [yearSpan(1992), yearSpan(1997)])).toEqual([320]);
  });

  it('says the years of a size where the model had several and they are one period', () => {
    const made = (...runs: Run[]) =>
      of(page('Satchel', ['width', 300]), file({ name: 'Satchel', runs })).flatMap(({ says }) =>
        says.kind === 'model-size' ? ['made' in says ? says.made : null] : [],
      )[0];
    const first = size(30);
    const other: Run = { size: size(40) };
    expect(made({ size: first, made: ['1990', '1995'] }, other)).toEqual(yearsSpan(1990, 1995));
    expect(made({ size: first, made: ['1990', null] }, other)).toEqual(sinceSpan('1990-01-01'));
    expect(made({ size: first, made: ['unknown', '1995'] }, other)).toEqual(yearsSpan(null, 1995));
    expect(made({ size: first, made: ['unknown', null] }, other)).toBeNull();
    expect(made({ size: first, made: ['1990', '1995'] })).toBeNull();
    expect(made({ size: first, made: ['1990', '1995'] }, { made: ['1996', '1999'] })).toBeNull();
    const twice: Run['made'] = [
      ['1990', '1991'],
      ['1994', '1995'],
    ];
    expect(made({ size: first, made: twice }, other)).toBeNull();
    expect(made({ size: first }, other)).toBeNull();
  });

  it('expects of a family what its first size is', () => {
    const family = file(modelOf('Carryall 30', size(30, 20, 10)), modelOf('Carryall 35', size(20, 30, 10)));
    const row: Side[] = [
      ['unknown', 205],
      ['unknown', 310],
    ];
    expect(sides(page('Carryall', ...row), family)).toEqual(['height 205', 'width 310']);
  });

  it('is nothing of a model where there is no file', () => {
    expect(told(page('Carryall 30', ['width', 300]), null)).toEqual(['size-read-0: width 290–310']);
  });
});
