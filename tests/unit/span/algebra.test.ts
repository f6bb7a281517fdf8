import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addDays,
  anyDate,
  complementOf,
  isoDate,
  meetAll,
  meetSets,
  meetSpans,
  type Span,
  spanHolds,
  unionOf,
  widenSpan,
  yearsSpan,
} from '../../../src/span';
import { setHolds } from './set-holds';

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);
const runs = { seed, numRuns: 500 };

const day = fc.integer({ min: 0, max: 60 }).map((days) => addDays('1995-12-20', days));
const span: fc.Arbitrary<Span> = fc
  .tuple(fc.option(day), fc.option(day))
  .filter(([from, to]) => from === null || to === null || from <= to)
  .map(([from, to]) => ({ from, to, precision: 'range' as const }));
const set = fc.array(span, { maxLength: 4 });

const ends = (spans: readonly (Span | null)[]) => spans.map((one) => one && `${one.from}..${one.to}`);
const days = Array.from({ length: 100 }, (_, at) => addDays('1995-12-01', at));
const holdsDay = (spans: readonly Span[], one: string) =>
  spans.some(({ from, to }) => (from === null || from <= one) && (to === null || to >= one));
/** The days of a set one by one, far enough beyond every end to tell open ends. */
const daysOf = (spans: readonly Span[]) => days.filter((one) => holdsDay(spans, one));

test('meeting two spans is commutative and associative, and every date is its neutral element', () => {
  fc.assert(
    fc.property(span, span, span, (a, b, c) => {
      expect(ends([meetSpans(a, b)])).toEqual(ends([meetSpans(b, a)]));
      const left = meetSpans(a, b);
      const right = meetSpans(b, c);
      expect(ends([left && meetSpans(left, c)])).toEqual(ends([right && meetSpans(a, right)]));
      expect(ends([meetSpans(a, anyDate)])).toEqual(ends([a]));
      expect(ends([meetSpans(a, a)])).toEqual(ends([a]));
    }),
    runs,
  );
});

test('a meeting is never wider than what met', () => {
  fc.assert(
    fc.property(span, span, (a, b) => {
      const met = meetSpans(a, b);
      if (met) expect([spanHolds(a, met), spanHolds(b, met)]).toEqual([true, true]);
    }),
    runs,
  );
});

test('the complement of a set holds exactly the days that are in none of its spans', () => {
  fc.assert(
    fc.property(set, (spans) => {
      const rest = complementOf(spans);
      expect(daysOf(rest)).toEqual(days.filter((one) => !holdsDay(spans, one)));
      expect(ends(complementOf(rest))).toEqual(ends(unionOf(spans)));
    }),
    runs,
  );
});

test('a union holds exactly the days of its spans, in order, disjoint and not touching', () => {
  fc.assert(
    fc.property(set, (spans) => {
      const union = unionOf(spans);
      expect(daysOf(union)).toEqual(daysOf(spans));
      for (const [at, one] of union.entries()) {
        const next = union[at + 1];
        if (next) expect(one.to !== null && next.from !== null && addDays(one.to, 1) < next.from).toBe(true);
      }
      expect(ends(unionOf([...spans].reverse()))).toEqual(ends(union));
      expect(ends(unionOf(union))).toEqual(ends(union));
    }),
    runs,
  );
});

test('meeting sets is commutative, associative and exact day by day', () => {
  fc.assert(
    fc.property(set, set, set, (a, b, c) => {
      expect(ends(meetSets(a, b))).toEqual(ends(meetSets(b, a)));
      expect(ends(meetSets(meetSets(a, b), c))).toEqual(ends(meetSets(a, meetSets(b, c))));
      expect(daysOf(meetSets(a, b))).toEqual(days.filter((one) => holdsDay(a, one) && holdsDay(b, one)));
    }),
    runs,
  );
});

test('meeting sets is monotone: a wider set never meets in less, one more set never in more', () => {
  fc.assert(
    fc.property(set, set, span, (a, b, more) => {
      expect(setHolds(meetSets([...a, more], b), meetSets(a, b))).toBe(true);
      expect(setHolds(meetAll([a]), meetAll([a, b]))).toBe(true);
    }),
    runs,
  );
});

const room = fc.integer({ min: 0, max: 4000 });

test('widening holds the span, and grows with the days', () => {
  fc.assert(
    fc.property(span, room, room, room, (one, before, after, more) => {
      const widened = widenSpan(one, { before, after });
      expect(spanHolds(widened, one)).toBe(true);
      expect(spanHolds(widenSpan(one, { before: before + more, after: after + more }), widened)).toBe(true);
    }),
    runs,
  );
});

test('no sets meet in every date, the empty set in none', () => {
  expect(meetAll([])).toEqual([anyDate]);
  expect(meetAll([[yearsSpan(1990, 1999)], []])).toEqual([]);
  expect(setHolds([yearsSpan(1990, 1999)], [])).toBe(true);
});

test('years that follow one another are one span', () => {
  expect(ends(unionOf([yearsSpan(1991, 1991), yearsSpan(1990, 1990), yearsSpan(1993, null)]))).toEqual([
    '1990-01-01..1991-12-31',
    '1993-01-01..null',
  ]);
  expect(isoDate(1990, 1, 1)).toBe('1990-01-01');
});
