import { describe, expect, it } from 'vitest';
import { placesOfCode } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import { partialDateSpan, type Span, yearSpan } from '../../../src/span';
import { ondrasse } from '../check/sample';

type Carrier = Partial<MakerFile['carriers'][number]> & { where: string };
const file = (...carriers: Carrier[]): MakerFile => ({
  ...ondrasse,
  carriers: carriers.map((one) => ({ kind: 'stamp', ...one })),
});
const day = (text: string) => partialDateSpan(text) as Span;
const nineties: Carrier = { where: 'tab', used: ['1990', '1999'] };
const later: Carrier = { where: 'pocket', used: ['2000', null] };

describe('where a piece carries its code', () => {
  it.each<[string, Carrier[], string | null, Span[], string[]]>([
    ['nowhere that the file tells', [], null, [], []],
    ['in its place at any time', [{ where: 'tab' }], null, [yearSpan(1994)], ['tab']],
    ['on the last day of a period', [nineties, later], null, [day('1999-12-31')], ['tab']],
    ['on the first day of the next', [nineties, later], null, [day('2000-01-01')], ['pocket']],
    ['in either place of two dates', [nineties, later], null, [yearSpan(1994), yearSpan(2004)], ['tab', 'pocket']],
    [
      'in either place about the turn',
      [nineties, later],
      null,
      [{ ...yearSpan(1997), about: true }],
      ['tab', 'pocket'],
    ],
    ['in either place where no date is known', [nineties, later], null, [], ['tab', 'pocket']],
    ['in no place of its time', [nineties], null, [yearSpan(2004)], []],
    [
      'about the end of a period that the file hedges',
      [{ where: 'tab', used: ['about 1990', 'about 1999'] }],
      null,
      [yearSpan(2003)],
      ['tab'],
    ],
    [
      'in one of several periods',
      [
        {
          where: 'tab',
          used: [
            ['1980', '1985'],
            ['1990', '1995'],
          ],
        },
      ],
      null,
      [yearSpan(1992)],
      ['tab'],
    ],
    ['by the years of its system', [{ where: 'tab', systems: ['interleaved-month'] }], null, [yearSpan(1989)], []],
    ['in the years of its system', [{ where: 'tab', systems: ['interleaved-month'] }], null, [yearSpan(1990)], ['tab']],
    [
      'of a system that the file lacks: at any time',
      [{ where: 'tab', systems: ['x'] }],
      null,
      [yearSpan(1989)],
      ['tab'],
    ],
    [
      'by years of its own before those of its system',
      [{ where: 'tab', systems: ['interleaved-month'], used: ['1980', '1985'] }],
      null,
      [yearSpan(1995)],
      [],
    ],
    [
      'where a buyer can read it',
      [
        { where: 'chip', readable: false },
        { where: 'tab', readable: true },
      ],
      null,
      [],
      ['tab'],
    ],
    [
      'where its model carries it',
      [{ where: 'tab' }, { where: 'base', models: ['Satchel', 'Tote'] }],
      'SATCHEL',
      [],
      ['base'],
    ],
    ['where every model carries it', [{ where: 'tab' }, { where: 'base', models: ['Satchel'] }], 'Tote', [], ['tab']],
    [
      'where every model does, of no name',
      [{ where: 'tab' }, { where: 'base', models: ['Satchel'] }],
      null,
      [],
      ['tab'],
    ],
    ['in two places', [{ where: 'tab' }, { where: 'base' }, { where: 'tab' }], null, [], ['tab', 'base']],
    ['in so many that none helps', [{ where: 'tab' }, { where: 'base' }, { where: 'pocket' }], null, [], []],
  ])('%s', (_, carriers, model, dates, wanted) => {
    expect(placesOfCode(file(...carriers), model, dates)).toEqual(wanted);
  });
});
