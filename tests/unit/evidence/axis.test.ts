import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Dating, layOutAxis, reason } from '../../../src/evidence';
import { monthSpan, yearSpan, yearsSpan } from '../../../src/span';
import { decadeSpan } from '../span/decade';
import { claimed, coded, datingOf, madeClaim, marked, originClaim, piece } from './samples';

const layOut = (evidence: Dating[]) => layOutAxis(evidence, reason(evidence));

test('evidence that speaks of no date gives no axis', () => {
  expect(layOut([])).toBeNull();
  expect(layOut([piece('place', { spans: [], places: ['FR'], about: 'place' })])).toBeNull();
});

test('one year sits in the middle of three, with a tick for each', () => {
  const axis = layOut([piece('claim', { spans: [yearSpan(1994)] })])!;
  expect(axis.years).toEqual([1993, 1995]);
  expect(axis.ticks.map(({ year }) => year)).toEqual([1993, 1994, 1995]);
  expect(axis.ticks[0]?.at).toBe(0);
  const bar = axis.rows[0]!.bars[0]!;
  expect([bar.start, bar.end]).toEqual([expect.closeTo(1 / 3, 2), expect.closeTo(2 / 3, 2)]);
  expect([bar.opensLeft, bar.opensRight]).toEqual([false, false]);
});

test('open ends run on beyond the axis, and alternatives are bars of one row', () => {
  const axis = layOut([
    piece('code', { from: { kind: 'reading', id: 'd' }, spans: [monthSpan(1995, 1), monthSpan(2005, 9)] }),
    piece('zip', { from: { kind: 'mark', id: 'm' }, spans: [yearsSpan(1990, null)], strength: 'soft' }),
  ])!;
  expect(axis.rows.map(({ bars }) => bars.length)).toEqual([2, 1]);
  expect(axis.rows[0]?.stated.spans).toEqual([monthSpan(1995, 1), monthSpan(2005, 9)]);
  expect(axis.rows[1]?.bars[0]).toMatchObject({ end: 1, opensLeft: false, opensRight: true });
  expect(axis.rows[1]?.strength).toBe('soft');
});

test('a date far from the core does not stretch the axis: its bar runs off, or it is said to lie beyond', () => {
  const axis = layOut([
    piece('claim', { spans: [yearSpan(1994)] }),
    piece('patent', { spans: [yearsSpan(1863, null)] }),
    piece('letter', { spans: [yearSpan(1863)], strength: 'soft' }),
  ])!;
  expect(axis.years).toEqual([1993, 1995]);
  expect(axis.rows[1]?.bars).toEqual([{ start: 0, end: 1, opensLeft: true, opensRight: true }]);
  expect(axis.rows[2]).toMatchObject({ bars: [], beyond: ['before'] });
});

test('the stretch of the largest agreeing set is marked, and who belongs to it is said', () => {
  const axis = layOut([
    claimed('claim', { spans: [yearSpan(1984)] }),
    coded('code', { spans: [yearsSpan(1993, 1996)] }),
    marked('mark', { spans: [yearsSpan(1988, 1995)] }),
  ])!;
  expect(axis.agreeing).toMatchObject({ sides: [{ spans: [yearsSpan(1993, 1995)], by: ['read', 'seen'] }], more: 0 });
  expect(axis.agreeing.bars).toHaveLength(1);
  expect(axis.rows.map(({ stands }) => stands)).toEqual(['apart', 'agrees', 'agrees']);
});

test('where no two facts agree nothing is marked', () => {
  const axis = layOut([piece('a', { spans: [yearSpan(1984)] }), piece('b', { spans: [yearSpan(1994)] })])!;
  expect(axis.agreeing).toEqual({ bars: [], sides: [], more: 0 });
  expect(axis.rows.map(({ stands }) => stands)).toEqual(['apart', 'apart']);
});

test('what fits others that it could not have excluded speaks against none of them', () => {
  const bought = piece('bought', { spans: [{ from: null, to: '2010-12-31', precision: 'range' }] });
  const code = piece('code', { spans: [yearSpan(1986)], strength: 'soft' });
  const other = piece('other', { spans: [yearSpan(2006)], strength: 'soft' });
  const stands = (...evidence: Dating[]) => layOut(evidence)!.rows.map((row) => row.stands);
  expect(stands(bought)).toEqual(['alone']);
  expect(stands(bought, code)).toEqual(['alone', 'alone']);
  expect(stands(bought, code, other)).toEqual(['alone', 'apart', 'apart']);
});

test('a loose claim is one row, as it was said', () => {
  const claims = [madeClaim('c1', 'from the 1990s', decadeSpan(1990))];
  const axis = layOut(datingOf({ claims, decodings: [], marks: [], maker: null }))!;
  expect(axis.rows.map(({ kind, stated, strength }) => [kind, stated.spans, strength])).toEqual([
    ['claim', [decadeSpan(1990)], 'soft'],
  ]);
});

test('the days of a country are a row of their own kind', () => {
  const evidence = datingOf({
    claims: [madeClaim('c1', 'made in 1985', yearSpan(1985)), originClaim('c2', 'made in Czechoslovakia', 'CSHH')],
    decodings: [],
    marks: [],
    maker: null,
  });
  expect(layOut(evidence)?.rows.map(({ kind }) => kind)).toEqual(['claim', 'country']);
});

test('the same fact said again with the same dates is one row', () => {
  const axis = layOut([piece('a', { basis: 'year' }), piece('b', { basis: 'year' }), piece('c', { basis: 'other' })])!;
  expect(axis.rows.map(({ evidence }) => evidence)).toEqual([['a', 'b'], ['c']]);
});

test('a code seen and quoted is two rows with names of their own, and what follows from it one', () => {
  const source = { kind: 'listing', field: 'code' } as const;
  const followed = { basis: 'code:KV0915', spans: [yearsSpan(1990, 2006)] };
  const axis = layOut([
    piece('quoted', { from: { kind: 'reading', id: 'q' }, basis: 'code:KV0915', strength: 'soft', source }),
    piece('quoted-system', { from: { kind: 'system', id: 'q' }, ...followed, strength: 'soft' }),
    piece('seen', {
      from: { kind: 'reading', id: 's' },
      basis: 'code:KV0915',
      source: { kind: 'photo' },
    }),
    piece('seen-system', { from: { kind: 'system', id: 's' }, ...followed }),
  ])!;
  expect(axis.rows.map(({ kind, strength, evidence }) => [kind, strength, evidence])).toEqual([
    ['quoted', 'soft', ['quoted']],
    ['system', 'hard', ['seen-system', 'quoted-system']],
    ['reading', 'hard', ['seen']],
  ]);
});

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

test('every bar lies on the axis, no tick is outside it, and there are at most seven ticks', () => {
  const year = fc.integer({ min: 1800, max: 2030 });
  const span = fc
    .tuple(fc.option(year), fc.option(year))
    .filter(([from, to]) => from === null || to === null || from <= to)
    .map(([from, to]) => yearsSpan(from, to));
  fc.assert(
    fc.property(fc.array(fc.array(span, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 8 }), (all) => {
      const axis = layOut(all.map((spans, at) => piece(`e${at}`, { spans })));
      if (!axis) return;
      for (const { start, end } of [...axis.rows.flatMap(({ bars }) => bars), ...axis.agreeing.bars]) {
        expect(0 <= start && start < end && end <= 1).toBe(true);
      }
      for (const row of axis.rows) expect(row.bars.length + row.beyond.length).toBeGreaterThan(0);
      for (const { at } of axis.ticks) expect(0 <= at && at < 1).toBe(true);
      expect(axis.ticks.length).toBeGreaterThan(0);
      expect(axis.ticks.length).toBeLessThanOrEqual(7);
    }),
    { seed, numRuns: 300 },
  );
});

test('a row of a construction fact says which part it tells of', () => {
  const from = { kind: 'construction', id: 'c1' } as const;
  const said = { field: 'title', words: 'words', maker: 'Ondrasse' } as const;
  const made = { ...said, kind: 'material' as const, is: ['twill'] };
  const evidence = [
    piece('lining', { from, says: { ...made, part: 'lining' }, spans: [yearsSpan(1970, 2006)] }),
    piece('dust-bag', { from, says: { ...made, part: 'dust-bag' }, spans: [yearsSpan(1985, null)] }),
    piece('model', { from, says: { ...said, kind: 'model', model: 'Carryall 30' }, spans: [yearsSpan(1975, null)] }),
    piece('code', { from: { kind: 'reading', id: 'd1' }, basis: 'code:KV0915', spans: [yearsSpan(1995, 1995)] }),
  ];
  const about = layOutAxis(evidence, reason(evidence))?.rows.map((row) => [row.evidence[0], row.about]);
  expect(Object.fromEntries(about ?? [])).toEqual({
    lining: 'lining',
    'dust-bag': 'dust-bag',
    model: 'model',
    code: null,
  });
});

test('two dates with equally many facts are both named and marked', () => {
  const evidence = [
    claimed('claim', { spans: [yearSpan(1987)] }),
    coded('code', { spans: [monthSpan(1998, 7)] }),
    marked('mark', { spans: [yearsSpan(1970, 2000)] }),
  ];
  const axis = layOutAxis(evidence, reason(evidence))!;
  expect(axis.agreeing).toMatchObject({
    sides: [{ spans: [yearSpan(1987)] }, { spans: [monthSpan(1998, 7)] }],
    more: 0,
  });
  expect(axis.agreeing.bars).toHaveLength(2);
  expect(axis.rows.map(({ stands }) => stands)).toEqual(['one-side', 'one-side', 'agrees']);
});

test('of many equal sides three are named, how many more there are is told, and every one of them counts as a side', () => {
  const label = marked('label', { spans: [yearsSpan(1970, 2000)] });
  const years = [1981, 1983, 1985, 1987, 1989].map((year) => claimed(`in ${year}`, { spans: [yearSpan(year)] }));
  const axis = layOut([...years, label])!;
  expect(axis.agreeing).toMatchObject({
    sides: [1981, 1983, 1985].map((year) => ({ spans: [yearSpan(year)] })),
    more: 2,
  });
  expect(axis.rows.map(({ stands }) => stands)).toEqual([...years.map(() => 'one-side'), 'agrees']);
});

test('a fact of two statements that the same facts meet in its middle and at its edge is one side', () => {
  const from = { kind: 'claim', id: 'c' } as const;
  const axis = layOut([
    claimed('narrow', { from, basis: 'about 2010', spans: [yearSpan(2010)], strength: 'soft' }),
    claimed('wide', { from, basis: 'about 2010', spans: [yearsSpan(2005, 2015)] }),
    marked('mark', { spans: [yearsSpan(2008, 2012)] }),
    coded('code', { basis: 'code', spans: [], places: ['IE'] }),
    piece('plant', { from: { kind: 'plant', id: 'd' }, basis: 'code', spans: [yearsSpan(1990, 2009)] }),
  ])!;
  expect(axis.agreeing).toMatchObject({
    // Only the code says where.
    sides: [{ spans: [yearsSpan(2008, 2010)], places: [], by: ['seen', 'said'] }],
    more: 0,
  });
});
