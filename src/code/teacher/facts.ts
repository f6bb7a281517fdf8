import { dayOfYearSpan, daySpan, daysInMonth, isoDate, monthSpan, quarterSpan, type Span } from '../../span';
import { readStated, type Stated } from '../reads';
import { tidyCode } from '../typed';
import { weekSpan } from '../week';
import { readKnownDate } from './known-date';

/**
 * A known code and what is known of its piece, in the form of a maker file's examples ("1995-01, BE"), or its date in
 * words ("about 1990", "bought 2001, BE").
 */
export interface KnownCode {
  code: string;
  reads: string;
}

/** One way to name a part of a year, by a number. */
export type YearPart = 'month' | 'week' | 'sunday-week' | 'quarter' | 'dayOfYear';

/** A known code made ready: its letters and digits, its separators, and what each number could be. */
export interface Fact {
  index: number;
  code: string;
  /** What is known, in the form of an example. */
  reads: string;
  /** Letters and digits alone. */
  bare: string;
  /** Separators by the number of letters and digits before them. */
  marks: Map<number, string>;
  /** Opening and closing bracket round the character at this place of `bare`; null without. */
  enclosed: number | null;
  stated: Stated;
  place: string | null;
  /** Years that the date allows. */
  years: number[];
  /** The date is too vague to tell one era of a maker from the next. */
  loose: boolean;
  /** Days since a fixed one, by which codes are put in order of time. */
  middle: number;
  /** Its place among all codes in order of time. */
  order: number;
}

/** An open date is taken to reach so many years: "bought 2001" says little of when, but not nothing. */
const openYears = 40;
/** A date of more years than this does not order codes in time. */
const looseYears = 6;

/** No known code has more letters and digits. */
export const mostSigns = 24;

const isSign = (character: string) => /[A-Z0-9]/.test(character);

/** An example that cannot be used: its date is neither a date nor a place, or its code has no or too many characters. */
export interface Unusable {
  index: number;
  why: { kind: 'not-known'; words: string } | { kind: 'length' };
}

/** Reads known codes; the ones that cannot be used come back with the reason. */
export function readFacts(examples: readonly KnownCode[]): {
  facts: Fact[];
  unusable: Unusable[];
} {
  const facts: Fact[] = [];
  const unusable: Unusable[] = [];
  for (const [index, { code, reads }] of examples.entries()) {
    const known = knownReads(reads);
    const stated = readStated(known);
    const tidy = tidyCode(code);
    const bare = [...tidy].filter(isSign).join('');
    if ('unknown' in stated) unusable.push({ index, why: { kind: 'not-known', words: stated.unknown } });
    else if (bare.length === 0 || bare.length > mostSigns) unusable.push({ index, why: { kind: 'length' } });
    else {
      const dated = timeOf(stated);
      facts.push({
        index,
        code,
        reads: known,
        bare,
        ...marksOf(tidy),
        stated,
        place: stated.places[0] ?? null,
        ...dated,
      });
    }
  }
  for (const [order, fact] of [...facts].sort((a, b) => a.middle - b.middle).entries()) fact.order = order;
  return { facts, unusable };
}

function marksOf(tidy: string): { marks: Map<number, string>; enclosed: number | null } {
  const marks = new Map<number, string>();
  let place = 0;
  let enclosed: number | null = null;
  for (const [at, character] of [...tidy].entries()) {
    if (isSign(character)) place++;
    else if ('([{'.includes(character) && ')]}'.includes(tidy[at + 2] ?? ' ')) enclosed = place;
    else if (!(')]}'.includes(character) && enclosed === place - 1)) marks.set(place, character);
  }
  return { marks, enclosed };
}

/** The date in the form of an example where it is written in words; places stay as they are. */
function knownReads(reads: string): string {
  if (!('unknown' in readStated(reads))) return reads;
  const [date = '', ...places] = reads.split(',');
  const known = readKnownDate(date);
  return known === null ? reads : [known, ...places].join(',');
}

function timeOf({ spans }: Stated): Pick<Fact, 'years' | 'loose' | 'middle' | 'order'> {
  const years = new Set<number>();
  const ends: number[] = [];
  for (const { from, to } of spans) {
    const first = from === null ? Number(to?.slice(0, 4) ?? 0) - openYears : Number(from.slice(0, 4));
    const last = to === null ? first + openYears : Number(to.slice(0, 4));
    for (let year = first; year <= Math.min(last, first + 2 * openYears); year++) years.add(year);
    ends.push(Date.parse((from ?? to)!) / 86_400_000, Date.parse((to ?? from)!) / 86_400_000);
  }
  const open = spans.some(({ from, to }) => from === null || to === null);
  const middle = ends.length === 0 ? 0 : (Math.min(...ends) + Math.max(...ends)) / 2;
  return { years: [...years], loose: spans.length === 0 || open || years.size > looseYears, middle, order: 0 };
}

/** Whether the known date and a part of the calendar can both be: neither need be the finer one. */
const meets = (fact: Fact, span: Span | null): boolean =>
  span !== null &&
  fact.stated.spans.some(
    ({ from, to }) =>
      (to === null || span.from === null || span.from <= to) && (from === null || span.to === null || from <= span.to),
  );

const lastNumber: Record<YearPart, number> = { month: 12, week: 53, 'sunday-week': 53, quarter: 4, dayOfYear: 366 };

/** The span of a year's part by its number, from 1 to the last that any year has; null where this year has none. */
function partSpan(part: YearPart, year: number, number: number): Span | null {
  switch (part) {
    case 'month':
      return monthSpan(year, number);
    case 'quarter':
      return quarterSpan(year, number);
    case 'dayOfYear':
      return dayOfYearSpan(year, number);
    case 'week':
      return weekSpan(year, number, 'iso');
    case 'sunday-week':
      return weekSpan(year, number, 'first-full-sunday');
  }
}

const tables = new Map<string, (Span | null)[]>();

/** The spans of all parts of a year, worked out once: every fact asks for them again and again. */
function partsOfYear(part: YearPart, year: number): (Span | null)[] {
  const key = `${part} ${year}`;
  const known = tables.get(key);
  if (known) return known;
  const spans = Array.from({ length: lastNumber[part] }, (_, step) => partSpan(part, year, step + 1));
  tables.set(key, spans);
  return spans;
}

/** What a fact allows for a part of the year. */
export interface Allowed {
  /** Years by the number that its date can have in them. */
  years: ReadonlyMap<number, readonly number[]>;
  /** How many numbers of a year it allows, on the whole. */
  choices: number;
}

/** A day of the year as one number: 1231 is the last. */
export const dayNumber = (month: number, day: number): number => month * 100 + day;

/** By the date itself: every frame has its own copy of a fact, and every way to write a date asks again. */
const allowed = new WeakMap<Stated, Map<YearPart | 'day', Allowed>>();

/** What a fact allows for a part of the year, or for month and day together: the numbers whose span meets a stated date. */
export function allowedOf(fact: Fact, part: YearPart | 'day'): Allowed {
  const known = allowed.get(fact.stated) ?? new Map<YearPart | 'day', Allowed>();
  allowed.set(fact.stated, known);
  const found = known.get(part) ?? gather(part === 'day' ? daysAllowed(fact) : numbersAllowed(fact, part));
  known.set(part, found);
  return found;
}

type Dated = readonly [number: number, year: number];

function gather(all: readonly Dated[]): Allowed {
  const years = new Map<number, number[]>();
  for (const [number, year] of all) {
    const known = years.get(number);
    if (known) known.push(year);
    else years.set(number, [year]);
  }
  return { years, choices: all.length / Math.max(1, new Set(all.map(([, year]) => year)).size) };
}

function numbersAllowed(fact: Fact, part: YearPart): Dated[] {
  const around = part === 'week' || part === 'sunday-week' ? [-1, 0, 1] : [0];
  const years = [...new Set(fact.years.flatMap((year) => around.map((step) => year + step)))];
  return years.flatMap((year) =>
    partsOfYear(part, year).flatMap((span, step): Dated[] => (meets(fact, span) ? [[step + 1, year]] : [])),
  );
}

function daysAllowed(fact: Fact): Dated[] {
  const days: Dated[] = [];
  for (const year of fact.years) {
    for (let month = 1; month <= 12; month++) {
      for (let day = 1; day <= daysInMonth(year, month); day++) {
        if (meets(fact, daySpan(isoDate(year, month, day)))) days.push([dayNumber(month, day), year]);
      }
    }
  }
  return days;
}
