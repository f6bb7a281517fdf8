import { it } from 'vitest';
import { shapeMass } from '../../../src/code/mass';
import { shapeShare, shares, typedShares, wideShare } from '../../../src/code/prior';
import { lengthFits, misfitLayout, readLayout, unnamedMisfits } from '../../../src/code/read-layout';
import { freeSearch, searchLayout, stepsOf, textOf } from '../../../src/code/search';
import { looseLattice, mistakeShare, plainSigns, tidyCode, typedLattice } from '../../../src/code/typed';
import type { Layout } from '../../../src/maker/types';
import { keep, short } from './said-short';
import { laidOut, opened } from './tried';

/*
 * What each step of the decoder hands on to the next, whole, on inputs made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

it('signs as they are compared, and what a writer mistakes', async () => {
  const codes = ['', ' kv  09–15 ', 'ＫＶ１２', 'Ä1', 'a\tb', '—―−‐', 'O0', 'IL1', 'S5-B8', '😀1', 'ß'];
  const pairs = ['O0', '0O', 'OQ', 'DO', '38', '83', '17', 'UV', 'VU', 'KX', 'T7', 'A4', '49', 'Q0', 'L1', 'IL'];
  await keep(
    [
      ...codes.map(
        (code) =>
          `${JSON.stringify(code)} ${JSON.stringify(plainSigns(code))} ${JSON.stringify(tidyCode(code))} ${short(typedLattice(code))}`,
      ),
      ...pairs.map((pair) => `${pair} ${mistakeShare(pair[0]!, pair[1]!)}`),
      short(looseLattice('')),
      short(looseLattice('5-')),
    ],
    'typed',
  );
});

it('lattices made ready and searched', async () => {
  const lattices: Record<string, Record<string, number>[]> = {
    empty: [],
    'small letters': [{ k: 0.5, K: 0.25, '': 0.25 }],
    'no chance': [{ K: 0, V: 1 }],
    'a letter that grows': [{ ß: 1 }],
    blanks: [{ '': 1 }, { '': 1 }],
    'one twice': [
      { K: 0.9, '': 0.1 },
      { K: 0.9, '': 0.1 },
    ],
    'one twice with a pause': [{ K: 1 }, { '': 1 }, { K: 1 }],
    doubtful: [{ '1': 0.6, I: 0.4 }, { '': 1 }, { '9': 0.7, '': 0.3 }],
    date: [{ '9': 1 }, { '': 1 }, { '4': 0.8, '1': 0.2 }, { '': 1 }, { '0': 0.9, '1': 0.1 }, { '': 1 }, { '3': 1 }],
    'longer than it': [...'94031'].flatMap((character) => [{ [character]: 0.9, '': 0.1 }]),
  };
  const layouts: Layout[] = [
    [{ year: 2 }, { month: 2 }],
    [{ literal: 'K', optional: true }, { serial: { min: 1, max: 3 } }],
    [{ separator: '-', optional: true }, { any: 1 }, { separator: '-', optional: true }],
    [{ serial: { min: 1, max: 2 } }, { check: 'luhn' }],
  ];
  const out = Object.entries(lattices).flatMap(([name, steps]) => {
    const ready = stepsOf({ steps });
    const found = freeSearch(ready);
    return [
      `${name} ${short(ready)} at two ${short(stepsOf({ steps }, 2))}`,
      `  ${found
        .slice(0, 5)
        .map(({ text, probability }) => `${text || 'nothing'} ${short(probability)}`)
        .join(', ')}`,
      ...layouts.map((layout) => {
        const laid = laidOut(layout);
        const fillings = (keeps: 'valid' | 'shape', width = 64, least?: number) =>
          searchLayout(ready, laid, { width, keep: keeps, ...(least === undefined ? {} : { least }) })
            .slice(0, 4)
            .map(({ path, probability }) => `${textOf(path)} ${short(probability)}`)
            .join(', ') || 'none';
        const told = found.map((one) => ({ ...one }));
        const tried = { system: opened(layout), laid, known: 1, named: true, latestYear: undefined };
        const { weighed, mass } = readLayout(ready, tried);
        return `  ${short(layout)} fits ${lengthFits(ready, laid)}, shape ${short(shapeMass(ready, laid))}, rest ${short(unnamedMisfits(ready, laid, 0.1))}: valid ${fillings('valid')}; shape ${fillings('shape')}; narrow ${fillings('valid', 1)}; likely ${fillings('valid', 64, 0.3)}; weighs ${short(weighed.map(({ reading, weight, legibility, inPeriod }) => [reading.text, weight, legibility, inPeriod]))} of ${short(mass)}; misfits ${short(misfitLayout(told, tried))}`;
      }),
    ];
  });
  await keep(out, 'searched');
});

it('shares of what a text may be', async () => {
  const texts = ['', '1', '12', '1234', 'A', 'AB', 'A1', 'A-1', '1-2'];
  const cells = [[], [{ wide: '0123456789' }], [{ wide: '-' }], [{ wide: '' }], [{ wide: 'AB' }, { wide: '01' }]];
  await keep(
    [
      short({ shares, typedShares }),
      ...texts.map((text) => `${text} ${short(shapeShare(text))}`),
      ...cells.slice(0, 3).map((one) => `${short(one)} ${short(wideShare(one))}`),
      short(wideShare(cells[4]!)),
    ],
    'shares',
  );
});
