import { it } from 'vitest';
import { encodeReading, type Reading, testSystem } from '../../../src/code';
import { bookPlants, openSystem } from '../../../src/code/book';
import { fillLayout } from '../../../src/code/encode';
import { readExactly } from '../../../src/code/exact';
import { expectedShare } from '../../../src/code/prior';
import { builtInMakers } from '../../../src/maker';
import type { CodeSystem, Layout } from '../../../src/maker/types';
import { keep, short } from './said-short';
import { laidOut, opened, plants, system } from './tried';

/*
 * What each step of the decoder hands on to the next, whole, on inputs made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

const read = ({ text, span: date, places, plant, parts, reasons, systemExcepted }: Reading) =>
  `${text} ${date ? `${date.from}/${date.to} ${date.precision}` : 'undated'} ${places.join(' ') || '–'} ${plant?.code ?? '–'} ${short(parts)} ${short(reasons)}${systemExcepted ? ` ${short(systemExcepted)}` : ''}`;

it('codes under one layout, each character as it stands', async () => {
  const rows: [layout: Layout, codes: string, more?: Partial<CodeSystem>, latest?: number][] = [
    [
      [{ plant: 2 }, { month: 2 }, { year: 2 }],
      'KV0395 KV0300 HJ0300 HJ0391 ZZ0195 XX0195 KV1395 KV0389 kv0395 KV-0395',
    ],
    [[{ plant: 2 }, { year: 2 }, { month: 2 }], 'HJ0103 HJ9503 KV0401', { used: ['1990', '2010'] }],
    [[{ year: 2 }, { month: 2 }], '9503 8903 0503 9913', { used: ['1990', null] }, 1998],
    [[{ year: 4 }, { month: 2 }], '199503 198903', { exceptions: [{ what: 'a shop', used: ['1985', '1986'] }] }],
    [[{ year: 1 }, { quarter: 'ABCD' }], '5A 5D 5E', { used: ['1980', '2010'] }],
    [[{ year: 2 }, { week: 2 }], '9853 9753 9800'],
    [[{ year: 2 }, { week: 2, count: 'first-full-sunday' }], '9552 9553 9801'],
    [[{ year: 2 }, { month: 2 }, { day: 2 }], '950228 950229 960229 950431'],
    [[{ day: 2 }, { year: 2 }], '3195 3295'],
    [[{ year: 2 }, { dayOfYear: 3 }], '95365 95366 96366 95000'],
    [
      [
        { year: 2, reversed: true },
        { dayOfYear: 3, reversed: true },
      ],
      '59563 69663',
    ],
    [[{ year: 2 }, { week: 2 }, { dayOfYear: 3 }], '9501003 9501300'],
    [
      [{ year: 'cycle', letters: 'ABCDEFGHJK', first: 1990, enclosed: true }, { serial: 2 }],
      '(B)12 B12 [K]99 (B12 L12',
    ],
    [
      [
        {
          serial: 3,
          table: [
            { first: 100, last: 199, made: ['1991', '1992'] },
            { first: 300, last: null, made: ['1995', null] },
          ],
        },
      ],
      '099 100 199 200 299 300 999',
    ],
    [
      [{ year: 2 }, { serial: 3, reversed: true, table: [{ first: 100, last: 199, made: ['1991', '1992'] }] }],
      '91001 91991 95001 91002',
    ],
    [[{ year: 2 }, { serial: 3 }, { check: 'luhn' }], '951233 951234'],
    [[{ check: 'mod11', over: 'all' }, { separator: '-', optional: true }, { any: 3 }], '112A 1-123 6-123 X-123'],
    [
      [{ literal: 'K', optional: true }, { year: 2 }, { separator: '-/', optional: true }, { any: 1, of: 'letter' }],
      'K95-A 95/A 95A K95 95-1',
    ],
    [[{ year: 2 }, { literal: 'X' }, { plant: 2 }], 'VKX59 JHX59 59XVK', { reversed: true }],
    [[{ month: '1-9OND' }, { year: 2 }], 'O95 D95 095 A95 195'],
    [[{ any: 2 }, { serial: { min: 1, max: 2 } }], 'AB1 AB12 AB123 AB'],
  ];
  const out = rows.flatMap(([layout, codes, more, latest]) => [
    `${short(layout)} ${short(more ?? {})} ${latest ?? ''}`,
    ...codes.split(' ').flatMap((code) => {
      const { exact, impossible } = readExactly(opened(layout, more), code, latest);
      const lines = exact.map(({ reading, meaning, laid, path }) => {
        const share = expectedShare(opened(layout, more), laid, path, meaning, latest);
        const again = encodeReading(reading, [
          { ...builtInMakers[0]!, maker: 'Ondrasse', plants, codeSystems: [system(layout, more)] },
        ]);
        return `    ${read(reading)}; ${meaning.inPeriod ? 'in' : 'out of'} period, ${meaning.inFuture ? 'future' : 'past'}, plant ${meaning.plantInUse ? 'in use' : 'idle'}; ${short(reading.probability)}, share ${short(share)}, written ${again}`;
      });
      return [`  ${code} ${impossible ? `impossible ${short(impossible)}` : ''}`, ...lines];
    }),
  ]);
  await keep(out, 'exact');
});

it('what is put into a layout', async () => {
  const rows: [layout: Layout, values: Record<string, string>, texts: (string | null)[]][] = [
    [[{ year: 2 }, { serial: { min: 1, max: 3 } }], { year: '95' }, [null, '7']],
    [[{ year: 2 }, { serial: { min: 1, max: 3 } }], { year: '95' }, [null, '777']],
    [[{ year: 2 }, { serial: { min: 1, max: 3 } }], { year: '95' }, [null, '7777']],
    [[{ year: 2 }, { serial: { min: 1, max: 3 } }], {}, [null, null]],
    [[{ month: 'tens' }, { year: 2 }, { month: 'units' }], { year: '95', month: '12' }, []],
    [[{ year: 'cycle', letters: 'AB', first: 1990, enclosed: true }], { year: 'B' }, ['()']],
    [[{ year: 'cycle', letters: 'AB', first: 1990, enclosed: true }], { year: 'B' }, [null]],
    [[{ any: 2 }, { check: 'luhn' }], {}, ['12', null]],
    [[{ any: 2 }, { check: 'vin' }], {}, ['IO', null]],
    [[{ literal: 'X' }, { separator: '-', optional: true }], {}, ['X', '-']],
  ];
  const out = rows.map(([layout, values, texts]) => {
    const path = fillLayout(laidOut(layout), { values, texts });
    return `${short(layout)} ${short(values)} ${short(texts)}: ${path === null ? 'none' : JSON.stringify(path)}`;
  });
  await keep(out, 'filled');
});

it('what is wrong with a system and its examples', async () => {
  const rows: [layout: Layout, examples: [code: string, reads: string][], more?: Partial<CodeSystem>][] = [
    [
      [{ year: 2 }, { month: 2 }],
      [
        ['9503', '1995-03'],
        ['9503', '1995'],
        ['9503', '1996'],
        ['9513', '1995'],
        ['9513', 'nothing'],
        ['9503', 'nothing'],
        ['9503', 'soon'],
        ['8503', '2085-03'],
        ['95', '1995'],
        ['9503', '1995-03, BE'],
        ['9503', 'undated'],
      ],
    ],
    [[{ year: 2 }, { year: 4 }], [['9503', '1995']]],
    [
      [{ plant: 2 }, { year: 1 }],
      [
        ['KV5', '1995, BE'],
        ['KV5', '1995, FR'],
        ['HJ5', '1995, FR'],
      ],
      { used: ['1980', '1999'] },
    ],
    [
      [{ serial: 2 }],
      [
        ['12', 'undated'],
        ['12', '1995'],
      ],
    ],
  ];
  const out = rows.flatMap(([layout, examples, more]) => {
    const { layouts, examples: faults } = testSystem(
      system(layout, { ...more, examples: examples.map(([code, reads]) => ({ code, reads })) }),
      plants,
    );
    return [
      short(layout),
      ...examples.map(
        ([code, reads], at) => `  ${code} ${reads}: ${short(faults.find(({ example }) => example === at)?.fault)}`,
      ),
      `  ${short(layouts)}`,
    ];
  });
  const two = openSystem(
    {
      id: 'two',
      used: ['1990', null],
      layouts: [[{ year: 2 }], [{ year: 2 }, { year: 4 }]],
      sources: ['a', 'b'],
      strength: 'soft',
      exceptions: [{ used: ['1980', '1981'] }, {}],
    } as never,
    null,
    new Map(),
  );
  const book = bookPlants([
    ...plants,
    { code: 'KV', place: 'BE', used: ['2005', '2006'], sources: ['a', 'b'], strength: 'soft' },
    { code: 'KV', place: 'BE', used: ['2007', '2008'], sources: ['a', 'b'] },
    { code: 'QQ', place: 'PT', used: ['1990', '1991'], sources: ['a'], exceptions: [{ used: ['1995', '1996'] }] },
  ] as never);
  await keep(
    [...out, short({ ...two, system: { ...two.system, layouts: two.system.layouts.length } }), short(book)],
    'systems',
  );
});
