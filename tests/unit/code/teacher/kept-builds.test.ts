import { it } from 'vitest';
import { layoutOf } from '../../../../src/code/teacher/layout';
import { explainLeftover } from '../../../../src/code/teacher/leftover';
import { serialTable } from '../../../../src/code/teacher/serial-table';
import { keep, short } from '../said-short';
import { builtRound, datedIn, factsOf, frameOf } from './framed';

/*
 * Layouts built round dates, and what else a list may mean, on lists with a slip, a vague date or a rival in them. Where
 * it changes on purpose, `npm test -- unit/code/teacher/kept --update` writes it anew.
 */

it('plants that a list contradicts, and places that may be plants or numbers', async () => {
  const lists: [rows: string, used: number[], wrong: number][] = [
    ['KV90 = 1990, BE; KV91 = 1991, BE; KV92 = 1992, FR; HJ93 = 1993, FR', [2, 3], 0],
    ['KV90 = 1990, FR; KV91 = 1991, BE; KV92 = 1992, BE; HJ93 = 1993, FR', [2, 3], 1],
    ['KV90 = 1990, FR; KV91 = 1991, BE; KV92 = 1992, FR; KV93 = 1993, BE; HJ93 = 1993, IT', [2, 3], 2],
    ['KV90 = 1990, BE; KV91 = 1991, BE; KV92 = 1992, BE; KV93 = 1993, BE', [2, 3], 0],
    ['1290 = 1990, BE; 1291 = 1991, BE; 3492 = 1992, FR; 3493 = 1993, FR; 5694 = 1994, IT', [2, 3], 0],
    ['1290 = 1990, BE; 3491 = 1991, BE; 5692 = 1992, FR; 7893 = 1993, FR', [2, 3], 0],
    ['K1290 = 1990, BE; K1291 = 1991, BE; H3492 = 1992, FR; H3493 = 1993, FR', [3, 4], 0],
    ['12K90 = 1990, BE; 34K91 = 1991, BE; 56H92 = 1992, FR; 78H93 = 1993, FR', [3, 4], 0],
    ['K190 = 1990, BE; K291 = 1991, BE; 1392 = 1992, FR; H493 = 1993, FR; H594 = 1994, FR', [2, 3], 1],
    ['KVX90 = 1990; HJX91 = 1991; ZMX92 = 1992', [3, 4], 0],
    ['K1V90 = 1990; H2J91 = 1991; Z3M92 = 1992', [3, 4], 0],
    ['A190K = 1990; 2B91H = 1991; 3C92Z = 1992', [2, 3], 0],
    ['ABC90 = 1990; BCD91 = 1991; CDE92 = 1992', [3, 4], 0],
    ['1-KV90 = 1990, BE; 12-KV91 = 1991, BE; 123-HJ92 = 1992, FR', [3, 4], 0],
  ];
  const out = lists.map(([rows, used, wrong]) => {
    const found = explainLeftover(frameOf(rows, 'head'), used, wrong);
    return `${rows}, used ${used.join()}, wrong ${wrong}\n  ${short(found)}`;
  });
  await keep(out, 'plants');
});

it('layouts built round each way to write the date', async () => {
  const lists = [
    'A12 = 1980; B34 = 1981; D56 = 1983; A78 = 2006; B90 = 2007',
    'KV90 = 1990, BE; KV91 = 1991, BE; HJ92 = 1992, FR; HJ93 = 1993, FR; KV94 = 1994, FR',
    '90-1 = 1990; 91-12 = about 1991; 92-123 = 1980s; 93-4 = 1985..1999; 94-56 = DE',
    '1-90 = 1990; 12-91 = 1991; 123-92 = 1992; 4-03 = 2003',
    '903 = 1990-03; 914 = 1991-05; 925 = 1992-05; 936 = 1993-06',
  ];
  const out = lists.flatMap((rows) => {
    const facts = factsOf(rows);
    const lines = datedIn(facts, facts.length - 1)
      .slice(0, 12)
      .map((one) => {
        const { candidate, bits, score } = builtRound(one);
        const { says: _, ...plain } = candidate;
        return `  ${short(plain)} is worth ${short(bits)}, ${short(score)}`;
      });
    return [rows, ...lines];
  });
  await keep(out, 'builds');
});

it('separators inside what stands in several places', async () => {
  const rows = '9-5-0-3 = 1995-03; 9-6-0-4 = 1996-04';
  const slots = [
    { week: 2 },
    { month: 2, reversed: true },
    { day: 2 },
    { serial: 2 },
    { any: 2, of: 'digit' as const },
    { literal: '95' },
    { dayOfYear: 3 as const },
    { serial: 2, table: [{ first: 0, last: 99, made: ['1990', '1999'] as [string, string] }] },
  ];
  const out = slots.map(
    (slot) => `${short(slot)}: ${short(layoutOf(frameOf(rows), [{ place: 0, slot: slot as never }]))}`,
  );
  await keep(out, 'separated');
});

it('running numbers with slips and vague dates', async () => {
  const lists: [rows: string, wrong: number][] = [
    ['100 = 1990; 101 = 1991; 103 = 1992; 104 = 1992', 0],
    ['400 = 1990; 100 = 1991; 200 = 1992; 300 = 1993; 350 = 1990', 2],
    ['100 = 1993; 200 = 1990; 300 = 1991; 400 = 1992', 1],
    ['100 = 1990; 200 = 1991; 300 = 1992; 150 = 1980..1990; 160 = 1992..2000; 310 = ..1991; 90 = 1990..', 1],
    ['100 = 1990..; 200 = 1991; 300 = 1992; 400 = 1993', 0],
    ['K00 = 1990; 200 = 1991; 300 = 1992; 400 = 1993', 1],
    ['100 = 1990; 200 = 1991; 300 = 1992; 250 = 1985 or 1989; 260 = 1985..1995', 0],
  ];
  const out = lists.map(([rows, wrong]) => `${rows}, wrong ${wrong}\n  ${short(serialTable(frameOf(rows), wrong))}`);
  await keep(out, 'risen');
});
