import { describe, expect, it } from 'vitest';
import { exceptedSpans, isExcepted, isOfModel } from '../../../src/evidence/exceptions';
import { yearsSpan } from '../../../src/span';

describe('exceptions of an entry', () => {
  it('an entry is of every model, or of those that it names', () => {
    expect(isOfModel({}, [])).toBe(true);
    expect(isOfModel({ models: [] }, [])).toBe(true);
    expect(isOfModel({ models: ['Satchel', 'Tote'] }, ['tote'])).toBe(true);
    expect(isOfModel({ models: ['Satchel'] }, ['Tote', 'SATCHEL'])).toBe(true);
    expect(isOfModel({ models: ['Satchel'] }, ['Tote'])).toBe(false);
    expect(isOfModel({ models: ['Satchel'] }, [])).toBe(false);
  });

  const used: [string, string] = ['1990', '1991'];
  it('a model is excepted in all years, not by its years alone', () => {
    const is = (exceptions: { what: string; models?: string[]; used?: [string, string] }[]) =>
      isExcepted({ exceptions }, ['Satchel']);
    expect(is([{ what: 'x', models: ['satchel'] }])).toBe(true);
    expect(
      is([
        { what: 'x', models: ['Tote'] },
        { what: 'y', models: ['Satchel'] },
      ]),
    ).toBe(true);
    expect(is([{ what: 'x', models: ['Tote'] }])).toBe(false);
    expect(is([{ what: 'x', models: ['Satchel'], used }])).toBe(false);
    expect(is([{ what: 'x' }])).toBe(false);
    expect(isExcepted({}, ['Satchel'])).toBe(false);
  });

  it('years are excepted of every model, of the one that is named, or of any where none is known', () => {
    const exceptions = [{ what: 'x', models: ['Satchel'], used }];
    expect(exceptedSpans({ exceptions }, ['satchel'])).toEqual([yearsSpan(1990, 1991)]);
    expect(exceptedSpans({ exceptions }, null)).toEqual([yearsSpan(1990, 1991)]);
    expect(exceptedSpans({ exceptions }, [])).toEqual([]);
    expect(exceptedSpans({ exceptions: [{ what: 'x', used }] }, [])).toEqual([yearsSpan(1990, 1991)]);
    expect(exceptedSpans({ exceptions: [{ what: 'x', models: ['Satchel'] }] }, null)).toEqual([]);
    expect(exceptedSpans({}, null)).toEqual([]);
  });
});
