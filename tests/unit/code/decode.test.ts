import { expect, test } from 'vitest';
import { decodeLattice, decodeText, freeDecode, readsOf } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import type { Lattice } from '../../../src/stamp/types';
import { benchMaker } from '../../bench/stamp/bench-maker';

const read = (code: string, maker: string | null = 'Ondrasse') =>
  decodeText(code, { makers: builtInMakers, maker, now: '2026-11-25' });

const lines = (code: string, maker: string | null = 'Ondrasse') =>
  read(code, maker).readings.map((reading) => `${reading.text} ${reading.system.id}: ${readsOf(reading)}`);

test.each([
  ['834', '834 three-digits: 1983-04'],
  ['8411', '8411 four-digits: 1984-11'],
  ['8609KV', '8609KV four-digits-plant: 1986-09, BE'],
  ['KV0915', 'KV0915 interleaved-month: 1995-01, BE'],
  ['LD2047', 'LD2047 interleaved-week: 2007-W24, BE'],
])('%s of Ondrasse reads in one way', (code, line) => {
  expect(lines(code)).toEqual([line]);
});

test.each(['kv0915', ' KV 0915 ', 'KV-0915', 'KVO9I5', 'ＫＶ０９１５'])('%j is read as KV0915', (typed) => {
  expect(lines(typed)).toEqual(['KV0915 interleaved-month: 1995-01, BE']);
});

test('a reading tells its slots, plant, period and reasons', () => {
  const { probability, ...reading } = read('KV0915').readings[0]!;
  expect(probability).toBeGreaterThan(0.99);
  expect(reading).toEqual({
    text: 'KV0915',
    system: { maker: 'Ondrasse', id: 'interleaved-month', source: 'invented for the demonstration', invented: true },
    parts: [
      { slot: 'plant', text: 'KV', start: 0, end: 2, tells: { kind: 'plant', place: 'BE' } },
      { slot: 'month tens', text: '0', start: 2, end: 3, tells: { kind: 'month', month: 1 } },
      { slot: 'year tens', text: '9', start: 3, end: 4, tells: { kind: 'year', year: 1995 } },
      { slot: 'month units', text: '1', start: 4, end: 5, tells: { kind: 'month', month: 1 } },
      { slot: 'year units', text: '5', start: 5, end: 6, tells: { kind: 'year', year: 1995 } },
    ],
    span: { from: '1995-01-01', to: '1995-01-31', precision: 'month' },
    places: ['BE'],
    plant: {
      code: 'KV',
      place: 'BE',
      used: [{ from: '1982-01-01', to: '2003-12-31', precision: 'range' }],
      source: 'invented for the demonstration',
    },
    systemUsed: { from: '1990-01-01', to: '2006-12-31', precision: 'range' },
    reasons: [
      { kind: 'part', value: 'KV', tells: { kind: 'plant', place: 'BE' } },
      { kind: 'part', value: '01', tells: { kind: 'month', month: 1 } },
      { kind: 'part', value: '95', tells: { kind: 'year', year: 1995 } },
      { kind: 'century', used: { from: '1990-01-01', to: '2006-12-31', precision: 'range' } },
    ],
  });
});

test('an impossible month is no reading but a misfit, with the nearest valid code', () => {
  const decoding = read('KV9915');
  expect(decoding.readings).toEqual([]);
  expect(decoding.misfits.map(({ slot, value, expected }) => ({ slot, value, expected }))).toEqual([
    { slot: 'month', value: '91', expected: { kind: 'range', first: '01', last: '12' } },
    { slot: 'week', value: '91', expected: { kind: 'range', first: '01', last: '53' } },
  ]);
  expect(decoding.nearest[0]).toMatchObject({
    text: 'KV0915',
    how: 'differs',
    likelihood: 0.01,
  });
});

test('the nearest codes are of a system in use at their date, and of a plant that worked then', () => {
  for (const code of ['KV9915', 'XX0915', 'ZM9911', '1415', 'KV1995'])
    for (const { reading } of read(code).nearest)
      expect([code, reading.reasons.filter(({ kind }) => /not-in-use/.test(kind))]).toEqual([code, []]);
  // ZM began in 1994: one character away, and not offered for a code of 1991.
  expect(read('ZN0911').nearest.map(({ text }) => text)).not.toContain('ZM0911');
});

test('a plant that is not on file is a misfit', () => {
  expect(read('XX0915').misfits[0]).toMatchObject({ slot: 'plant', value: 'XX' });
});

test('a date outside the system’s period and a plant outside its own are read and told', () => {
  expect(read('915').readings[0]?.reasons).toContainEqual({
    kind: 'system-not-in-use',
    used: { from: '1980-01-01', to: '1983-12-31', precision: 'range' },
  });
  // A coast workshop that began in 1994, in a code of 1991.
  expect(read('ZM0911').readings[0]?.reasons).toContainEqual({
    kind: 'plant-not-in-use',
    used: [{ from: '1994-01-01', to: '2012-12-31', precision: 'range' }],
  });
});

test('a date after the code was seen is read as lying in the future', () => {
  expect(read('LD1305').readings[0]?.reasons).toContainEqual({ kind: 'in-future' });
});

test('week 53 is read in long years only', () => {
  expect(lines('LD5038')).toEqual([]);
  expect(lines('LD5135')).toEqual(['LD5135 interleaved-week: 2015-W53, BE']);
});

test('check characters decide: one changed digit is a misfit', () => {
  expect(lines('B1042173', 'Calderwick & Rook')).toEqual(['B1042173 numbered: 2002-01-01..2004-12-31, GB']);
  expect(read('B1042183', 'Calderwick & Rook').misfits[0]).toMatchObject({ slot: 'check', value: '3' });
});

test('a number in a gap of the table is a misfit', () => {
  expect(read('1466000', 'Tessaro Vell').misfits[0]).toMatchObject({ slot: 'serial', value: '1466000' });
});

test('probabilities of all readings sum to at most 1', () => {
  for (const code of ['KV0915', 'KV0725', '915', 'A1B220', '1042210', '8906', 'KVO9I5']) {
    for (const maker of ['Ondrasse', null]) {
      const sum = read(code, maker).readings.reduce((total, { probability }) => total + probability, 0);
      expect(sum, code).toBeLessThanOrEqual(1 + 1e-9);
    }
  }
});

test('without a maker every file and the families are tried', () => {
  expect(lines('M3-214/98', null)).toEqual(['M3-214/98 day-of-year: 1998-08-02, IT']);
  expect(lines('GN0925', null)[0]).toBe('GN0925 plant-interleaved-month: 1995-02');
});

test.each(['', ' ', '--', '☺', 'A'.repeat(10_000), '0'.repeat(10_000), '-'.repeat(10_000)])(
  'a code that cannot be one has no reading (%#)',
  (code) => {
    expect(read(code, null).readings).toEqual([]);
  },
);

/** A stamp's line whose doubtful characters are shared among several, with blanks between. */
const latticeOf = (...steps: Lattice['steps']): Lattice => ({ steps: steps.flatMap((step) => [step, { '': 1 }]) });

test('a lattice is settled by the code system, not by the likelier character', () => {
  const lattice = latticeOf(
    { K: 1 },
    { V: 0.4, Y: 0.6 },
    { O: 0.7, 0: 0.3 },
    { 9: 1 },
    { I: 0.6, 1: 0.4 },
    { S: 0.6, 5: 0.4 },
  );
  expect(freeDecode(lattice).text).toBe('KY0915');
  const decoding = decodeLattice(lattice, { makers: builtInMakers, maker: 'Ondrasse', now: '2026-11-25' });
  expect(decoding.readings.map(readsOf)).toEqual(['1995-01, BE']);
  expect(decoding).toMatchObject({ code: 'KY0915', accepted: true });
});

test('doubled characters need a blank between them', () => {
  expect(freeDecode({ steps: [{ K: 1 }, { K: 1 }] }).text).toBe('K');
  expect(freeDecode({ steps: [{ K: 1 }, { '': 1 }, { K: 1 }] }).text).toBe('KK');
});

test('a stamp in doubt between two plants is not called read', () => {
  const lattice = latticeOf({ K: 0.5, L: 0.5 }, { V: 0.5, D: 0.5 }, { 0: 1 }, { 9: 1 }, { 8: 1 }, { 8: 1 });
  const decoding = decodeLattice(lattice, { makers: builtInMakers, maker: 'Ondrasse', now: '2026-11-25' });
  expect(decoding.accepted).toBe(false);
  expect(decoding.readings).toEqual([]);
  expect(
    decoding.nearest
      .map(({ text }) => text)
      .slice(0, 2)
      .sort(),
  ).toEqual(['KV0988', 'LD0988']);
});

test('a higher temperature makes the same lattice less certain', () => {
  const lattice = latticeOf({ 8: 1 }, { 3: 0.97, 2: 0.03 }, { 4: 1 });
  const options = { makers: builtInMakers, maker: 'Ondrasse', now: '2026-11-25' };
  const [cold, warm] = [1, 3].map((temperature) => decodeLattice(lattice, { ...options, temperature }));
  expect(cold?.readings[0]?.probability).toBeGreaterThan(0.89);
  expect(warm?.nearest[0]?.likelihood).toBeLessThan(0.8);
});

const spelled = (text: string): Lattice => ({
  steps: [...text].flatMap((character) => [{ '': 1 }, { [character]: 1 }]),
});
const stamped = (text: string) =>
  decodeLattice(spelled(text), { makers: builtInMakers, maker: 'Ondrasse', now: '2026-11-25' });

test('what differs from a sound code only in O for 0 or I for 1 is not called read, but offered as that code', () => {
  const decoding = stamped('KVO915');
  expect([decoding.code, decoding.accepted]).toEqual(['KVO915', false]);
  expect(decoding.nearest.map(({ text }) => text)).toContain('KV0915');
});

test('what no sound code is near counts as read when it is clear', () => {
  expect(stamped('KV0B15')).toMatchObject({ code: 'KV0B15', accepted: true, readings: [] });
});

test('a code is not taken for a shorter one that is rarer to the system but less likely on the stamp', () => {
  const file = benchMaker();
  const seen = 0.9;
  const steps = [...'8294-90'].flatMap((character, at) => [
    at === 0 ? { [character]: seen, '': 1 - seen } : { [character]: 1 },
    { '': 1 },
  ]);
  const { nearest } = decodeLattice({ steps }, { makers: [file], maker: null, now: '2026-11-25' });
  const chance = (text: string) => nearest.find((one) => one.text === text)?.likelihood;
  expect(chance('8294-90')).toBeCloseTo(seen, 1);
  expect(chance('294-90')).toBeCloseTo(1 - seen, 1);
});

test.each([
  [1999, '7K'],
  [2000, '7K'],
  [2001, '7'],
])('a lattice is read as far as 2000 steps: of %i it reads %s', (length, read) => {
  const steps: Lattice['steps'] = Array.from({ length }, () => ({ '': 1 }));
  steps[0] = { 7: 1 };
  steps[length - 1] = { K: 1 };
  expect(freeDecode({ steps }).text).toBe(read);
  expect(decodeLattice({ steps }, { makers: [], maker: null }).code).toBe(read);
});

test('an empty lattice has no text', () => {
  for (const steps of [[], [{ '': 1 }], [{}]]) {
    expect(decodeLattice({ steps }, { makers: builtInMakers, maker: null })).toMatchObject({
      code: '',
      accepted: false,
      readings: [],
      misfits: [],
    });
  }
  expect(freeDecode({ steps: [] })).toEqual({ text: '', probability: 1 });
  expect(freeDecode({ steps: [{}] })).toEqual({ text: '', probability: 0 });
});

test('a typed text is read as far as twice the longest code, and a longer one stands unread', () => {
  const decoded = (length: number) => decodeText('7'.repeat(length), { makers: [], maker: null });
  expect([127, 128].map((length) => decoded(length).accepted)).toEqual([true, true]);
  expect(decoded(129)).toMatchObject({ accepted: true, code: '7'.repeat(129), readings: [], misfits: [], nearest: [] });
  expect(decoded(129).id).toBe(`decoding:${'7'.repeat(64)}`);
  expect(decodeText('', { makers: [], maker: null }).accepted).toBe(false);
});

test('a maker without a file is read by the families, several makers by the files of each', () => {
  const makers = (maker: string | string[] | null) => [
    ...new Set(decodeText('8609', { makers: builtInMakers, maker }).readings.map(({ system }) => system.maker)),
  ];
  expect(makers('Nobody on file')).toEqual([null]);
  expect(makers([])).toEqual([null]);
  expect(makers(['Nobody on file', 'Ondrasse'])).toEqual(['Ondrasse']);
  expect(makers('Ondrasse')).toEqual(['Ondrasse']);
});
