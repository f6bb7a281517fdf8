import { it } from 'vitest';
import * as z from 'zod';
import { differenceSchema, expectedSchema } from '../../../src/code';
import { checkCharacters, checkShape } from '../../../src/code/check-character';
import { codeFamilies } from '../../../src/code/families';
import { isFault, layOut } from '../../../src/code/layout';
import { decodingSchema } from '../../../src/code/types';
import type { Layout } from '../../../src/maker/types';
import { keep, short } from './said-short';

/*
 * Check characters, layouts made ready, the families, and the forms of what is told of a code, whole. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

const context = { plantCodes: ['KV', 'HJ', 'ZM', '7', 'B', 'K4L'] };
const few = (list: readonly string[] | null | undefined) =>
  list && list.length > 8 ? [...list.slice(0, 3), `and ${list.length - 4}`, ...list.slice(-1)] : list;

it('check characters by every rule', async () => {
  const bodies = [
    '',
    '0',
    '1',
    '9',
    '12',
    '7992739871',
    '978030640615',
    '030640615',
    'CSQU305438',
    'IOQ',
    'JKLMNPRSTUVWXYZ',
    '1M8GDM9AKP042788',
    'A',
    'Z9',
    '1-2',
    'a1',
    '9'.repeat(20),
  ];
  const rules = Object.keys(checkShape) as (keyof typeof checkShape)[];
  const weights: (readonly number[] | undefined)[] = [undefined, [1], [7, 3, 1], [3, 1, 2, 5, 4, 6, 9, 8, 7, 1]];
  const out = bodies.map(
    (body) =>
      `${body}: ${rules.map((rule) => `${rule} ${(rule === 'mod10' || rule === 'mod11' ? weights : [undefined]).map((own) => checkCharacters(rule, [...body], rule === 'vin' ? 8 : body.length, own)).join('/')}`).join(', ')}`,
  );
  const early = checkCharacters('vin', [...'1M8GDM9AKP042788'], 0);
  await keep([...out, `a check in front: ${early}`, short(checkShape)], 'checks');
});

it('layouts made ready, and what is wrong with others', async () => {
  const optional = (count: number): Layout => Array.from({ length: count }, () => ({ separator: '-', optional: true }));
  const layouts: Layout[] = [
    [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
    [
      { year: 'cycle', letters: 'AB', first: 1990, enclosed: true },
      { literal: 'X', optional: true },
      { serial: { min: 1, max: 2 } },
    ],
    [{ year: 'units' }, { quarter: 1 }, { check: 'vin' }],
    [
      { check: 'mod97', over: 'before', weights: [1] },
      { day: 2, reversed: true },
    ],
    [{ year: 'tens' }, { month: 2 }],
    [{ year: 2 }, { year: 2 }],
    [{ year: 2 }, { year: 4 }],
    [{ month: 2 }, { month: 'units' }],
    [{ week: 'tens' }, { week: 'units', count: 'first-full-sunday' }],
    [{ serial: { min: 3, max: 2 } }],
    [{ serial: { min: 3, max: 3 } }],
    [{ serial: 20 }, { serial: 20 }, { serial: 20 }, { serial: 4 }],
    [{ serial: 20 }, { serial: 20 }, { serial: 20 }, { serial: 5 }],
    [{ year: 2 }, ...optional(8)],
    [{ year: 2 }, ...optional(9)],
    [{ literal: 'AB', optional: true }, { serial: 1 }],
  ];
  const out = layouts.map((layout) => {
    const laid = layOut(layout, context);
    if (isFault(laid)) return `${short(layout)}\n  fault ${short(laid)}`;
    const cells = laid.cells.length > 12 ? `${laid.cells.length} cells` : short(laid.cells);
    const groups = [...laid.groups.values()].map(({ next, values, ...group }) =>
      short({ ...group, values: few(values), next: next && [...next].slice(0, 6) }),
    );
    return `${short(layout)}\n  ${laid.shortest}–${laid.longest}, ${short(laid.slots)}\n  ${cells}\n  ${groups.join(' ')}\n  ${short(laid.checks)}`;
  });
  await keep(out, 'laid');
});

it('the families, and the forms of what is told of a code', async () => {
  await keep(codeFamilies.map(short), 'families');
  const forms = { decoding: decodingSchema, expected: expectedSchema, difference: differenceSchema };
  await keep(
    Object.entries(forms).map(
      ([name, form]) => `${name} ${JSON.stringify(z.toJSONSchema(form, { reused: 'ref' }), null, 1)}`,
    ),
    'forms',
  );
});
