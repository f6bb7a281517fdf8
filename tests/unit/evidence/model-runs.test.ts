import { describe, expect, it } from 'vitest';
import { datesOfModel, sizedRuns, sizesThen } from '../../../src/evidence/model-runs';
import type { Model, Run } from '../../../src/maker/types';
import { partialDateSpan, type Span, sinceSpan, yearSpan, yearsSpan } from '../../../src/span';

describe('the dates of a model', () => {
  const of = (runs: Run[] | undefined, over: Partial<Model> = {}) =>
    datesOfModel({ name: 'Satchel', ...(runs ? { runs } : {}), ...over });

  it('are those of all its runs, and of its exceptions', () => {
    expect(of([{ made: ['1990', '1995'] }, { made: ['2000', '2001'] }])?.spans).toEqual([
      yearsSpan(1990, 1995),
      yearsSpan(2000, 2001),
    ]);
    const exceptions = (year: string) => [{ what: 'x', used: [year, year] as [string, string] }];
    expect(
      of([{ made: ['1990', '1995'], exceptions: exceptions('1998') }], { exceptions: exceptions('1999') })?.spans,
    ).toEqual([yearsSpan(1990, 1995), yearsSpan(1998, 1999)].map((one) => expect.objectContaining({ from: one.from })));
  });

  it('are any where a run does not say, is open at both ends, or there is none', () => {
    expect(of(undefined)).toBeNull();
    expect(of([])).toBeNull();
    expect(of([{ made: ['1990', '1995'] }, {}])).toBeNull();
    expect(of([{ made: ['unknown', null] }])).toBeNull();
    expect(of([{ made: ['1990', '1991'] }, { made: ['unknown', null] }])).toBeNull();
    // One that is open at one end is not.
    expect(of([{ made: ['1990', null] }])?.spans).toEqual([sinceSpan('1990-01-01')]);
    expect(of([{ made: ['unknown', '1990'] }])?.spans).toEqual([yearsSpan(null, 1990)]);
  });

  it('are hard where the file says so of the model or of every run, and nothing disputes it', () => {
    const hard = (runs: Partial<Run>[], over: Partial<Model> = {}) =>
      of(
        runs.map((run) => ({ made: ['1990', '1995'], ...run })),
        over,
      )?.strength;
    expect(hard([{}])).toBe('soft');
    expect(hard([{}], { strength: 'hard' })).toBe('hard');
    expect(hard([{ strength: 'hard' }, { strength: 'hard' }])).toBe('hard');
    expect(hard([{ strength: 'hard' }, {}])).toBe('soft');
    expect(hard([{ strength: 'hard' }, {}], { strength: 'hard' })).toBe('hard');
    expect(hard([{ strength: 'soft' }], { strength: 'hard' })).toBe('soft');
    expect(hard([{ strength: 'hard' }], { strength: 'soft' })).toBe('soft');
    expect(hard([{ strength: 'hard' }], { standing: { is: 'disputed' } })).toBe('soft');
    expect(hard([{ standing: { is: 'disputed' } }], { strength: 'hard' })).toBe('soft');
    expect(hard([{ exceptions: [{ what: 'x' }] }], { strength: 'hard' })).toBe('soft');
  });

  it('are from the sources of each run, else of the model, each once', () => {
    const run = (...sources: string[]): Run => ({ made: ['1990', '1991'], ...(sources.length > 0 ? { sources } : {}) });
    expect(of([run('a'), run(), run('a', 'b')], { sources: ['m'] })?.sources).toEqual(['a', 'm', 'b']);
    expect(of([run()])?.sources).toEqual([]);
  });
});

describe('the sizes of a model', () => {
  const sized = (width: number, over: Partial<Run> = {}): Run => ({
    size: { width, unit: 'cm', tolerance: 1 },
    ...over,
  });
  const widths = (runs: Run[], dates: Span[], words: string[] = []) =>
    sizesThen({ name: 'Satchel', runs }, { dates, words }).map(({ size }) => size.width);
  const runs = [sized(30, { made: ['1990', '1995'] }), sized(35, { made: ['2000', '2005'] })];
  const day = (text: string) => partialDateSpan(text) as Span;

  it('are those of the dates of the piece, up to their last day', () => {
    expect(widths(runs, [day('1989-12-31')])).toEqual([30, 35]);
    expect(widths(runs, [day('1990-01-01')])).toEqual([30]);
    expect(widths(runs, [day('1995-12-31')])).toEqual([30]);
    expect(widths(runs, [day('2000-01-01')])).toEqual([35]);
    expect(widths(runs, [yearSpan(1992), yearSpan(2003)])).toEqual([30, 35]);
  });

  it('are all where no date is known or none fits, and those of any date always', () => {
    expect(widths(runs, [])).toEqual([30, 35]);
    expect(widths(runs, [yearSpan(1980)])).toEqual([30, 35]);
    expect(widths([...runs, sized(40)], [yearSpan(1992)])).toEqual([30, 40]);
    expect(widths([...runs, sized(40)], [])).toEqual([30, 35, 40]);
    expect(widths([...runs, sized(40)], [yearSpan(1980)])).toEqual([40]);
  });

  it('have the room of dates that are hedged', () => {
    expect(widths(runs, [{ ...yearSpan(1998), about: true }])).toEqual([30, 35]);
    expect(widths(runs, [{ ...yearSpan(1983), about: true }])).toEqual([30, 35]);
    expect(widths(runs, [{ ...yearSpan(1984), about: true }])).toEqual([30]);
    expect(widths([sized(30, { made: ['about 1990', 'about 1992'] }), runs[1]!], [yearSpan(1995)])).toEqual([30]);
  });

  it('are those of the run that the words name as whole words, whatever the date', () => {
    const named = [sized(30, { made: ['1990', '1995'] }), sized(35, { made: ['2000', '2005'], name: 'Harbour' })];
    expect(widths(named, [yearSpan(1992)], ['Satchel, HARBOUR edition'])).toEqual([35]);
    expect(widths(named, [yearSpan(1992)], ['Satchel', 'Harbour'])).toEqual([35]);
    expect(widths(named, [yearSpan(1992)], ['Harbourmaster'])).toEqual([30]);
    expect(widths(named, [yearSpan(1992)], [])).toEqual([30]);
  });

  it('are those of the runs that have one', () => {
    expect(sizedRuns({ name: 'Satchel', runs: [{ made: ['1990', '1995'] }, runs[0]!] })).toEqual([runs[0]]);
    expect(sizedRuns({ name: 'Satchel' })).toEqual([]);
  });
});
