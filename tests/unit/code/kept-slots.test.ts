import { it } from 'vitest';
import * as z from 'zod';
import { kindOfSlot, type Slot, slotForms, slotKinds } from '../../../src/code';
import { shapeSlot } from '../../../src/code/slot';
import type { SlotField } from '../../../src/code/slot/kind';
import { keep, short } from './said-short';

/*
 * Each kind of slot whole: its cells and values, its fields in an editor, its limits in a file. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

const context = { plantCodes: ['KV', 'HJ', 'ZM', '7', 'B', 'K4L'] };
const many = { plantCodes: 'AA AB AC AD AE AF AG AH AI AJ AK AL AM'.split(' ') };
const slots: Slot[] = [
  { literal: 'ab–c' },
  { literal: 'KV', optional: true },
  { separator: '-. /', optional: true },
  { separator: '–' },
  { plant: 2 },
  { plant: 1 },
  { plant: 3 },
  { plant: 4 },
  { year: 4 },
  { year: 4, reversed: true },
  { year: 2 },
  { year: 2, reversed: true },
  { year: 1 },
  { year: 'tens' },
  { year: 'units' },
  { year: 'cycle', letters: 'ABC', first: 1990 },
  { year: 'cycle', letters: 'AB12', first: 1990, enclosed: true },
  { month: 2 },
  { month: 2, reversed: true },
  { month: 'tens' },
  { month: 'units' },
  { month: '1-9' },
  { month: '1-9OND' },
  { month: 'letter' },
  { month: 'letter', letters: 'ABCDEFGHKLMN' },
  { week: 2 },
  { week: 'units', count: 'first-full-sunday' },
  { week: 2, count: 'iso', reversed: true },
  { quarter: 1 },
  { quarter: 'WXYZ' },
  { day: 2 },
  { day: 'tens' },
  { dayOfYear: 3 },
  { dayOfYear: 3, reversed: true },
  { serial: 2 },
  { serial: { min: 1, max: 3 } },
  { serial: { min: 3, max: 1 } },
  { check: 'luhn' },
  { check: 'mod97', over: 'all' },
  { check: 'mod11', weights: [1, 2] },
  { any: 2 },
  { any: 1, of: 'digit' },
  { any: 1, of: 'letter' },
  { any: 1, from: 'XYZ' },
];
const few = (list: readonly string[] | null | undefined) =>
  list && list.length > 8 ? [...list.slice(0, 3), `and ${list.length - 4}`, ...list.slice(-1)] : list;

it('the cells of every slot', async () => {
  const out = slots.map((slot) => {
    const { group, ...shape } = shapeSlot(slot, context);
    return `${short(slot)}\n  ${short({ ...shape, group: group && { ...group, values: few(group.values) } })}`;
  });
  await keep(
    [
      ...out,
      short(shapeSlot({ plant: 2 }, many)),
      short(shapeSlot({ plant: 2 }, { plantCodes: many.plantCodes.slice(1) })),
    ],
    'slot-cells',
  );
});

it('the fields of every kind of slot, as an editor shows them', async () => {
  const out = slotKinds.flatMap(({ kind, fresh, ...rest }) => {
    const own = slots.filter((slot) => kindOfSlot(slot)?.kind === kind) as Record<string, unknown>[];
    const blamed = 'blamed' in rest ? `, blamed ${rest.blamed}` : '';
    return [
      `${kind} ${short(fresh)}${blamed}`,
      ...(rest.fields as readonly SlotField<Slot>[]).flatMap(({ when, ...field }) => {
        const plain = field.as === 'choice' ? { ...field, choices: undefined, remake: undefined } : field;
        const shown = when ? own.filter(when).map(short) : ['always'];
        const choices =
          field.as === 'choice'
            ? (typeof field.choices === 'function' ? own.map(field.choices) : [field.choices]).map(short)
            : [];
        const remake = field.as === 'choice' ? field.remake : undefined;
        const made = remake
          ? own.map((slot) => [2, 'cycle', 'letter'].map((value) => short(remake(value, slot))).join(' '))
          : [];
        return [
          `  ${short(plain)}, shown for ${shown.join(' ')}`,
          ...[...new Set([...choices, ...made])].map((line) => `    ${line}`),
        ];
      }),
    ];
  });
  await keep(out, 'slot-fields');
});

it('what a slot of a file may be', async () => {
  const form = z.union(slotForms);
  const wide = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';
  const values: [name: string, of: (value: never) => unknown, values: readonly unknown[]][] = [
    ['literal', (literal) => ({ literal }), ['', 'A', '–', '\u0007', '😀', 'x'.repeat(20), 'x'.repeat(21)]],
    ['separator', (separator) => ({ separator }), ['', '-', '-'.repeat(10), '-'.repeat(11)]],
    ['plant', (plant) => ({ plant }), [0, 1, 6, 7, 1.5]],
    ['any', (any) => ({ any }), [0, 1, 20, 21, 1.5]],
    ['from', (from) => ({ any: 1, from }), ['', 'A', 'a', '-', wide, `${wide}A`]],
    [
      'serial',
      (serial) => ({ serial }),
      [0, 1, 20, 21, { min: 0, max: 2 }, { min: 1, max: 20 }, { min: 1, max: 21 }, { min: 2 }],
    ],
    ['table', (first) => ({ serial: 3, table: [{ first, last: null, made: ['1990', '1991'] }] }), [-1, 0, 1, 1.5]],
    [
      'last of a table',
      (last) => ({ serial: 3, table: [{ first: 0, last, made: ['1990', '1991'] }] }),
      [-1, 0, 1.5, null],
    ],
    [
      'rows of a table',
      (rows) => ({
        serial: 3,
        table: Array.from({ length: rows }, () => ({ first: 0, last: 1, made: ['1990', '1991'] })),
      }),
      [0, 2000, 2001],
    ],
    ['year', (year) => ({ year }), [0, 1, 2, 3, 4, 5, 'tens', 'units', 'cycle']],
    ['first year of a cycle', (first) => ({ year: 'cycle', letters: 'AB', first }), [1799, 1800, 2200, 2201, 1990.5]],
    ['letters of a cycle', (letters) => ({ year: 'cycle', first: 1990, letters }), ['', 'A', 'ab', wide]],
    ['month', (month) => ({ month }), [1, 2, 'tens', 'units', '1-9', '1-9OND', 'letter', 'letters']],
    [
      'letters of months',
      (letters) => ({ month: 'letter', letters }),
      [wide.slice(0, 11), wide.slice(0, 12), wide.slice(0, 13)],
    ],
    ['week', (week) => ({ week }), [1, 2, 'tens', 'units']],
    ['count of weeks', (count) => ({ week: 2, count }), ['iso', 'first-full-sunday', 'other']],
    ['quarter', (quarter) => ({ quarter }), [1, 2, 'ABC', 'ABCD', 'ABCDE', 'abcd']],
    ['day', (day) => ({ day }), [1, 2, 'tens', 'units']],
    ['day of the year', (dayOfYear) => ({ dayOfYear }), [2, 3, 'tens']],
    ['check', (check) => ({ check }), ['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin', 'other']],
    [
      'weights',
      (weights) => ({ check: 'mod10', weights }),
      [[], [0], [97], [98], [-1], [1.5], Array(40).fill(1), Array(41).fill(1)],
    ],
    ['over', (over) => ({ check: 'luhn', over }), ['before', 'all', 'behind']],
    ['kind of characters', (of) => ({ any: 1, of }), ['digit', 'letter', 'either', 'any']],
    ['reversed', (reversed) => ({ year: 2, reversed }), [true, false, 'yes']],
    ['optional', (optional) => ({ literal: 'A', optional }), [true, false, 'yes']],
    ['enclosed', (enclosed) => ({ year: 'cycle', letters: 'AB', first: 1990, enclosed }), [true, false, 'yes']],
    ['more than is asked', (more) => ({ plant: 2, more }), [1]],
  ];
  const out = values.map(([name, of, all]) => {
    const ok = all.map((value) => {
      const said = short(value) ?? '';
      return `${said.length > 24 ? `${said.slice(0, 12)}… ${said.length}` : said} ${form.safeParse(of(value as never)).success ? 'yes' : 'no'}`;
    });
    return `${name}: ${ok.join(', ')}`;
  });
  await keep(out, 'slot-limits');
});

it('a slot writes a date, and means one', async () => {
  const days = ['1994-03-14', '1999-12-31', '2000-02-29', '2001-01-01', '0999-10-02'];
  const out = slots.flatMap((slot) => {
    const kind = kindOfSlot(slot)!;
    const { group } = shapeSlot(slot, context);
    if (!group || (!kind.write && !kind.dates)) return [];
    const written = days.map((from) => {
      const date = {
        span: { from, to: from, precision: 'day' as const },
        year: Number(from.slice(0, 4)),
        week: from < '1999' ? null : 52,
      };
      return kind.write?.(date, group) ?? '–';
    });
    const numbers = [1, 2, 4, 12, 28, 29, 31, 53, 365, 366].filter((number) => number <= (group.values?.length ?? 0));
    const meant = numbers.map((number) => {
      const span = kind.dates?.(number, 1999, group, { month: 2 });
      return `${number} ${span === undefined ? 'nothing' : span === null ? 'none' : `${span.from}/${span.to}`}`;
    });
    const alone = kind.dates?.(2, 1999, group, { month: null });
    return [
      `${short(slot)}\n  writes ${written.join(' ')}\n  means ${meant.join(', ')}; without a month ${alone === undefined ? 'nothing' : alone?.from}`,
    ];
  });
  await keep(out, 'slot-dates');
});
