import { addDays, meetSpans } from './calendar';
import type { Span } from './types';

/**
 * A set of days as disjoint spans in order of time, none touching the next. The empty list is the empty set: no day.
 */
export type SpanSet = readonly Span[];

/** Every day. */
export const anyDate: Span = { from: null, to: null, precision: 'range' };

const startsBefore = (a: Span, b: Span): number => {
  if (a.from === b.from) return 0;
  if (a.from === null) return -1;
  if (b.from === null) return 1;
  return a.from < b.from ? -1 : 1;
};

const touches = (a: Span, b: Span): boolean => {
  if (a.to === null || b.from === null) return true;
  return a.to >= '9999-12-31' || b.from <= addDays(a.to, 1);
};

const endsLater = (a: Span, b: Span): boolean => a.to === null || (b.to !== null && a.to >= b.to);

/** The days in any of the spans: sorted, merged where they overlap or follow one another day on day. */
export function unionOf(spans: readonly Span[]): Span[] {
  const merged: Span[] = [];
  for (const span of [...spans].sort(startsBefore)) {
    const last = merged.at(-1);
    if (!last || !touches(last, span)) {
      merged.push(span);
    } else if (!endsLater(last, span)) {
      const joined: Span = {
        from: last.from,
        to: span.to,
        precision: last.from === span.from ? span.precision : 'range',
      };
      merged[merged.length - 1] = last.about || span.about ? { ...joined, about: true } : joined;
    }
  }
  return merged;
}

/** The days in none of the spans. */
export function complementOf(spans: readonly Span[]): Span[] {
  const left: Span[] = [];
  let from: string | null = null;
  for (const span of unionOf(spans)) {
    if (span.from !== null) left.push({ from, to: addDays(span.from, -1), precision: 'range' });
    if (span.to === null || span.to >= '9999-12-31') return left;
    from = addDays(span.to, 1);
  }
  return [...left, { from, to: null, precision: 'range' }];
}

/** The days in both sets. */
export function meetSets(a: SpanSet, b: SpanSet): Span[] {
  return unionOf(a.flatMap((one) => b.map((other) => meetSpans(one, other)).filter((met) => met !== null)));
}

/** The days in all of the sets; every day when there are none. */
export const meetAll = (sets: readonly SpanSet[]): Span[] => sets.reduce<Span[]>(meetSets, [anyDate]);
