import { describe, it } from 'vitest';
import { type Reading, readsOf } from '../../../src/code';
import { alikeCharacters, isClear } from '../../../src/code/clear';
import { changesBetween, nearestCodes } from '../../../src/code/nearest';
import { settle, type Weighed } from '../../../src/code/settle';
import { keep, short } from './said-short';
import { opened, span } from './tried';

/*
 * What each step of the decoder hands on to the next, whole, on inputs made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

describe('near codes', () => {
  const pairs: [string, string][] = [
    ['', ''],
    ['A', ''],
    ['', 'A'],
    ['KV0915', 'KV0915'],
    ['KV091S', 'KV0915'],
    ['KV0916', 'KV0915'],
    ['KV-0915', 'KV0915'],
    ['KV0915', 'KV-0915'],
    ['KV915', 'KV0915'],
    ['KV09915', 'KV0915'],
    ['VK0915', 'KV0915'],
    ['O', '0'],
    ['ABC', 'XYZ'],
    ['A1B', 'AB'],
  ];
  it('by the cheapest changes', async () =>
    keep(
      pairs.map(([was, is]) => `${was} → ${is}: ${short(changesBetween(was, is))}`),
      'changes',
    ));
  it('that are valid', async () => {
    const systems = [
      opened([{ plant: 2 }, { month: 2 }, { year: 2 }]),
      opened([{ year: 2 }, { separator: '-' }, { serial: { min: 1, max: 3 } }]),
      opened([{ year: 2 }, { literal: 'X' }, { plant: 2 }], { reversed: true, id: 'turned' }),
    ];
    const codes = [
      '',
      '--',
      'KV0915',
      'KV0995',
      'KV091S',
      'KVO995',
      'KV995',
      '95-1',
      '951',
      '85-1',
      'VKX59',
      'VKX5',
      'V',
      'A'.repeat(24),
      'A'.repeat(25),
      'KV0395',
    ];
    const out = codes.map(
      (code) =>
        `${code}: ${nearestCodes(code, systems)
          .map(
            ({ text, how, likelihood, system: { id }, reading }) =>
              `${text} ${how} ${short(likelihood)} ${id} ${readsOf(reading)}`,
          )
          .join('; ')}`,
    );
    await keep(out, 'near');
  });
});

it('weights settled into what is told', async () => {
  const reading = (text: string, year: number, maker: string | null = 'Ondrasse', id = 'a') =>
    ({
      text,
      probability: 0,
      system: { maker, id },
      parts: [],
      span: span(`${year}-01-01`, `${year}-12-31`),
      places: [],
      plant: null,
      systemUsed: span(null, null),
      reasons: [],
    }) as Reading;
  const one = (
    text: string,
    weight: number,
    year = 1995,
    inPeriod = true,
    id = 'a',
    maker: string | null = 'Ondrasse',
  ): Weighed => ({ reading: reading(text, year, maker, id), inPeriod, weight, legibility: 0.6 });
  const misfit = (text: string, weight: number, slot: 'month' | 'week' = 'month') => ({
    misfit: {
      text,
      probability: 0,
      system: { maker: 'Ondrasse', id: 'a' },
      slot,
      value: '13',
      expected: { kind: 'any-year' as const },
    },
    weight,
  });
  const cases: [
    name: string,
    weighed: Weighed[],
    misfits: ReturnType<typeof misfit>[],
    nothing: number,
    legible?: number,
  ][] = [
    ['nothing at all', [], [], 0],
    ['one alone', [one('9503', 1)], [], 0],
    ['at the level', [one('9503', 9)], [], 1],
    ['under the level', [one('9503', 8.9)], [], 1.1],
    ['two of one text', [one('9503', 5), one('9503', 4.5, 1895)], [], 0.5],
    ['two of one text, parted by a separator', [one('95-03', 5), one('9503', 4.5)], [], 0.5],
    ['the same under another system', [one('9503', 5), one('9503', 4.5, 1995, true, 'b')], [], 0.5],
    ['outside its period beside one inside', [one('9503', 5, 1995, false), one('9503', 5, 1996, true, 'b')], [], 0.5],
    ['outside its period alone', [one('9503', 10, 1995, false)], [], 0.5],
    [
      'outside beside one of another maker',
      [one('9503', 5, 1995, false), one('9503', 5, 1996, true, 'b', 'Tessaro Vell')],
      [],
      0.5,
    ],
    ['not legible', [one('9503', 10)], [], 0, 0.7],
    ['just legible', [one('9503', 10)], [], 0, 0.6],
    ['many', Array.from({ length: 6 }, (_, at) => one('9503', at < 1 ? 95 : 0.9, 1990 + at)), [], 0],
    ['many unlikely ones', Array.from({ length: 5 }, (_, at) => one('9503', at < 1 ? 99.9 : 0.05, 1990 + at)), [], 0],
    ['a misfit of a text that reads', [one('9503', 5)], [misfit('9503', 5)], 1],
    [
      'misfits',
      [one('9503', 2)],
      [misfit('9513', 5), misfit('9514', 0.4), misfit('9513', 1), misfit('9513', 1, 'week')],
      1,
    ],
    ['unlikely misfits', [], [misfit('9513', 0.049), misfit('9514', 0.05)], 0.901],
  ];
  const out = cases.map(([name, weighed, misfits, nothing, legible = 0.5]) => {
    const told = settle(weighed, misfits, { nothing, written: '9503', legible });
    const line = ({ text, probability, span: date, system: { maker, id } }: Reading) =>
      `${text} ${date?.from} ${maker} ${id} ${short(probability)}`;
    return `${name}: reads ${told.readings.map(line).join('; ') || 'nothing'} | misfits ${told.misfits.map(({ text, slot, probability }) => `${text} ${slot} ${short(probability)}`).join('; ')} | near ${told.nearest.map(({ how, likelihood, reading: near }) => `${how} ${short(likelihood)} ${line(near)}`).join('; ')}`;
  });
  await keep(out, 'settled');
});

it('whether a text is clear, and which of its characters may be others', async () => {
  const texts: [text: string, probability: number][][] = [
    [],
    [['', 1]],
    [['KV09', 0.9]],
    [['KV09', 0.89]],
    [
      ['KV09', 0.5],
      ['KVO9', 0.4],
    ],
    [
      ['KV09', 0.5],
      ['KVO9', 0.1],
      ['KVD9', 0.09],
      ['KVQ9', 0.3],
    ],
    [
      ['KV1', 0.6],
      ['KVI', 0.2],
      ['KVL', 0.2],
      ['KV11', 0.2],
    ],
    [
      ['KV1', 0.6],
      ['KX1', 0.4],
    ],
  ];
  const near = [
    ['KVO9', 'likely', 'Ondrasse'],
    ['KV09', 'as-written', 'Ondrasse'],
    ['KVO9', 'differs', null],
    ['KX09', 'likely', 'Ondrasse'],
  ].map(([text, how, maker]) => [{ text, how, system: { maker, id: 'a' } }]) as never[];
  const out = texts.map((all) => {
    const weighted = all.map(([text, probability]) => ({ text, probability }));
    return `${short(all)}: ${[[] as never, ...near].map((one) => isClear({ seen: weighted, weighed: weighted }, one)).join(' ')} ${short(alikeCharacters({ seen: weighted, weighed: weighted }))}`;
  });
  await keep(out, 'clear');
});
