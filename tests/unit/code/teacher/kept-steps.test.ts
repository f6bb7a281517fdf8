import { it } from 'vitest';
import { type CheckRule, checkCharacters } from '../../../../src/code/check-character';
import { pairsOfEras } from '../../../../src/code/teacher/eras';
import { layoutOf } from '../../../../src/code/teacher/layout';
import { explainLeftover } from '../../../../src/code/teacher/leftover';
import { inferCycle } from '../../../../src/code/teacher/letters';
import { serialTable } from '../../../../src/code/teacher/serial-table';
import { keep, short } from '../said-short';
import { builtRound, datedIn, ended, factsOf, frameOf } from './framed';

/*
 * What each step of the teacher hands on to the next, whole, on lists made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/teacher/kept --update` writes it anew.
 */

it('cycles of letters told from the codes alone', async () => {
  const lists = [
    'A = 1970; B = 1971; D = 1972',
    'A = 1970; B = 1971',
    '7 = 1970',
    'A = 1970; B = 1971; C = 1972; E = 1974..1975',
    'A = 1971; B = 1971; C = 1972; D = 1973',
    'A = 1990; B = 1991; C = 1992; D = 1993; A = 1980; A = 1980; D = 1983; D = 1983; F = 1985',
    'A = 1970; B = 1971; C = 1972; D = 1973',
    'A = 1970; E = 1972; K = 1975',
    'A = 1970; Z = 1971; C = 1972; D = 1973',
    'A = 1970; B = 1975; C = 1976; D = 1977; E = 1978',
    'A = 1970; A = 1971; A = 1971; B = 1972; C = 1973',
    'C = 1970; D = 1971; E = 1972; A = about 1968; H = about 1975; E = about 1975',
    'B = 1970; D = 1971; E = 1972; B = about 1968; E = 1970s',
    'C = 1972; B = 1971; A = 1970; 7 = 1973',
    'C = 1970; B = 1971; A = 1972; D = 1973',
    'A = 1990; H = 1995; P = 2000; X = 2005',
    'A = 1990; B = 1991; C = 1992; A = 1980; B = 1981; C = 1982; C = 1982',
    'H = 1990; K = 1991; S = 1994; Z = 1999',
  ];
  const out = lists.map((rows) => `${rows}\n  ${short(inferCycle(frameOf(rows).facts, 0))}`);
  await keep(out, 'cycles');
});

it('what the places without a date may mean', async () => {
  const lists: [rows: string, used: number[], wrong: number][] = [
    ['KV90 = 1990, BE; KV91 = 1991, BE; HJ92 = 1992, FR; HJ93 = 1993, FR', [2, 3], 0],
    ['KV90 = 1990, BE; KV91 = 1991, BE; HJ92 = 1992, FR; HJ93 = 1993, FR; KV94 = 1994, FR', [2, 3], 1],
    ['KV90 = 1990, BE; KV91 = 1991, BE; HJ92 = 1992, FR; HJ93 = 1993, FR; KV94 = 1994, FR', [2, 3], 0],
    ['KV90 = 1990, BE; KV91 = 1991; HJ92 = 1992; HJ93 = 1993, FR', [2, 3], 0],
    ['KV90 = 1990; KV91 = 1991; HJ92 = 1992', [2, 3], 0],
    ['KVAX90 = 1990; KVAB91 = 1991; HJAC92 = 1992', [4, 5], 0],
    ['KV90 = 1990; KV91 = 1991; KV92 = 1992', [2, 3], 0],
    ['KV90 = 1990; KV91 = 1991', [2, 3], 0],
    ['9012 = 1990; 9134 = 1991; 9256 = 1992', [0, 1], 0],
    ['90A2 = 1990; 913B = 1991; 92CC = 1992', [0, 1], 0],
    ['90ABCD = 1990; 91BCDE = 1991; 92CDEF = 1992', [0, 1], 0],
    ['90AB1 = 1990; 91CD2 = 1991; 92EF3 = 1992', [0, 1], 0],
    ['90A1B = 1990; 91C2D = 1991; 92E3F = 1992', [0, 1], 0],
    ['90-12-34 = 1990; 91-56-78 = 1991; 92-90-13 = 1992', [0, 1], 0],
    ['901237 = 1990; 914564 = 1991; 927890 = 1992; 935558 = 1993', [0, 1], 0],
    ['9018 = 1990; 9124 = 1991; 9231 = 1992; 9340 = 1993', [0, 1], 1],
    ['7117 = 1990, BE; 7118 = 1991, BE; 8119 = 1992, FR; 8110 = 1993, FR', [1, 2], 0],
    ['71B7 = 1990, BE; 71B8 = 1991, BE; 82C9 = 1992, FR; 82C0 = 1993, FR; 82C1 = 1993, FR', [3], 0],
    ['90ABCDE = 1990, BE; 91ABCDE = 1991, BE; 92FGHIJ = 1992, FR; 93FGHIJ = 1993, FR', [0, 1], 0],
    ['90K = 1990; 91K2 = 1991; 92K34 = 1992', [0, 1], 0],
  ];
  const out = lists.map(([rows, used, wrong]) => {
    const found = explainLeftover(frameOf(rows), used, wrong);
    return `${rows}, used ${used.join()}, wrong ${wrong}\n  ${short(found)}`;
  });
  await keep(out, 'leftover');
});

it('checks at the end of a code', async () => {
  const rules: CheckRule[] = ['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin'];
  const bodies = ['9017', '9128', '9236', '9349'];
  const checked = (rule: CheckRule, body: string) => body + checkCharacters(rule, [...body], body.length);
  const rowsOf = (codes: readonly string[]) => codes.map((code, at) => `${code} = ${1990 + at}`).join('; ');
  const lists: [name: string, codes: string[], wrong: number][] = [
    ...rules.map((rule): [string, string[], number] => [rule, bodies.map((body) => checked(rule, body)), 0]),
    ['three', bodies.slice(0, 3).map((body) => checked('luhn', body)), 0],
    ['two', bodies.slice(0, 2).map((body) => checked('luhn', body)), 0],
    ['one of four wrong', bodies.map((body, at) => (at === 3 ? `${body}1` : checked('luhn', body))), 0],
    ['one of four may be wrong', bodies.map((body, at) => (at === 3 ? `${body}1` : checked('luhn', body))), 1],
    ['behind letters', bodies.map((body) => checked('luhn', `${body}K`)), 0],
    ['behind a number of changing length', bodies.map((body, at) => checked('luhn', '7'.repeat(at + 1) + body)), 0],
  ];
  const out = lists.map(([name, codes, wrong]) => {
    const frame = frameOf(rowsOf(codes), 'head');
    return `${name}: ${codes.join(' ')}, wrong ${wrong}\n  ${short(explainLeftover(frame, [0, 1], wrong))}`;
  });
  await keep(out, 'checks');
});

it('a layout with the separators between its parts', async () => {
  const lists: [rows: string, slots: { place: number; slot: never }[], changing?: 'tail' | 'head'][] = [
    [
      '94-03 = 1994-03; 95-11 = 1995-11',
      [
        { place: 2, slot: { month: 2 } },
        { place: 0, slot: { year: 2 } },
      ] as never,
    ],
    [
      '94-03 = 1994-03; 9511 = 1995-11',
      [
        { place: 2, slot: { month: 2 } },
        { place: 0, slot: { year: 2 } },
      ] as never,
    ],
    [
      '9-4/03 = 1994-03; 9.511 = 1995-11',
      [
        { place: 0, slot: { year: 2 } },
        { place: 2, slot: { month: 2 } },
      ] as never,
    ],
    ['9-4 = 1994; 9-5 = 1995', [{ place: 0, slot: { year: 2, reversed: true } }] as never],
    [
      '94K-L-M = 1994; 95K-N-O = 1995',
      [
        { place: 0, slot: { year: 2 } },
        { place: 2, slot: { any: 3 } },
      ] as never,
    ],
    [
      '94K-LM = 1994; 95K-LM = 1995',
      [
        { place: 0, slot: { year: 2 } },
        { place: 2, slot: { literal: 'KLM' } },
      ] as never,
    ],
    [
      '94K-LM = 1994; 95K-LM = 1995',
      [
        { place: 0, slot: { year: 2 } },
        { place: 2, slot: { plant: 3 } },
      ] as never,
    ],
    [
      '941 = 1994; 9512 = 1995',
      [
        { place: 0, slot: { year: 2 } },
        { place: 2, slot: { serial: 1 } },
      ] as never,
    ],
    ['94 = 1994; 9512 = 1995', [{ place: 0, slot: { year: 2 } }] as never],
    [
      '1-94 = 1994; 12-95 = 1995',
      [
        { place: 1, slot: { year: 2 } },
        { place: 0, slot: { serial: 1 } },
      ] as never,
      'head',
    ],
    [
      'K94 = 1994; 1K95 = 1995',
      [
        { place: 1, slot: { year: 2 } },
        { place: 0, slot: { any: 1 } },
      ] as never,
      'head',
    ],
  ];
  const out = lists.map(
    ([rows, slots, changing]) => `${rows}: ${short(slots)}\n  ${short(layoutOf(frameOf(rows, changing), slots))}`,
  );
  await keep(out, 'layouts');
});

it('running numbers as a table', async () => {
  const lists: [rows: string, wrong: number][] = [
    ['100 = 1990; 200 = 1991; 300 = 1992', 0],
    ['100 = 1990; 101 = 1991; 102 = 1992', 0],
    ['100 = 1990; 101 = 1990; 105 = 1990; 300 = 1992', 0],
    ['100 = 1990; 200 = 1991', 0],
    ['100 = 1990; 200 = 1991; K00 = 1992', 0],
    ['100 = 1990; 200 = 1995; 300 = 1992; 400 = 1996', 0],
    ['100 = 1990; 200 = 1995; 300 = 1992; 400 = 1996', 1],
    ['300 = 1992; 1000 = 1995; 99 = 1990', 0],
    ['100 = 1990; 100 = 1991; 200 = 1992; 300 = 1993', 1],
    ['100 = 1990; 200 = 1991; 300 = 1992; 250 = bought 1991; 260 = bought 1985; 90 = 1991..; 400 = 1980..1999', 0],
    ['100 = 1990; 200 = 1991; 300 = 1992; 200 = 1980..1991; 200 = ..1990; 300 = 1993..', 0],
  ];
  const out = lists.map(([rows, wrong]) => `${rows}, wrong ${wrong}\n  ${short(serialTable(frameOf(rows), wrong))}`);
  await keep(out, 'tables');
});

it('dates, layouts built round them, and pairs of eras', async () => {
  const lists: [rows: string, least: number, wrong: number][] = [
    ['9403 = 1994-03; 9511 = 1995-11; 0107 = 2001-07; 9912 = 1999-12', 4, 0],
    ['K403 = 1994-03; T511 = 1995-11; K107 = about 2000; T912 = DE', 3, 1],
    ['853 = 1985-03; 869 = 1986-09; 847 = 1984-07; K15 = 1995-01; H99 = 1999-12; K93 = about 1993; H92 = 2002', 3, 1],
    ['A12 = 1980; B3 = 1981; C456 = 1982; D71 = 1983', 4, 0],
    ['853 = 1985-03; 869 = 1985-03; 847 = 1985-03; 123 = 1995', 2, 0],
  ];
  const out = lists.flatMap(([rows, least, wrong]) => {
    const facts = factsOf(rows);
    const work = { steps: 0, tried: 0 };
    const dated = datedIn(facts, least, work);
    const { value: pairs, turns } = ended(pairsOfEras(dated, facts, { least, wrong, most: 5, work }));
    return [
      `${rows}, at least ${least}, wrong ${wrong}: ${short(work)}, ${turns} turns`,
      ...dated.slice(0, 24).map(({ frame, year, part, bits, cost }) => {
        const { candidate, bits: worth, score } = builtRound({ frame, year, part, bits, cost });
        return `  ${frame.changing} year ${year.places.join()} part ${part.places.join()} costs ${short(cost)}, bits ${short(bits)}: ${short(candidate)} is worth ${short(worth)}, ${short(score)}`;
      }),
      ...pairs.map(
        ({ early, late, isEarly, isLate, ...pair }) =>
          `  pair ${short(early.year.slots)} ${short(early.part.slots)} then ${short(late.year.slots)} ${short(late.part.slots)}: ${facts.map(({ order }) => `${order} ${isEarly(order) ? 'early' : isLate(order) ? 'late' : 'neither'}`).join(', ')} ${short(pair)}`,
      ),
    ];
  });
  await keep(out, 'built');
});
