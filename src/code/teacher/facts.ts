import {
  dayOfYearSpan,
  daySpan,
  daysInMonth,
  isoDate,
  monthSpan,
  quarterSpan,
  type Span,
  spanHolds,
  yearSpan,
} from '../../span';
import { readStated, type Stated } from '../reads';
import { tidyCode } from '../typed';
import { weekSpan } from '../week';

/** A known code and what it is known to say, in the form of a maker file's examples ("1995-01, BE"). */
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
  reads: string;
  /** Letters and digits alone. */
  bare: string;
  /** Separators by the number of letters and digits before them. */
  marks: Map<number, string>;
  /** Opening and closing bracket round the character at this place of `bare`; null without. */
  enclosed: number | null;
  stated: Stated;
  place: string | null;
}

const isSign = (character: string) => /[A-Z0-9]/.test(character);

/** Reads known codes; the ones that cannot be used come back with the reason. */
export function readFacts(examples: readonly KnownCode[]): {
  facts: Fact[];
  unusable: { index: number; why: string }[];
} {
  const facts: Fact[] = [];
  const unusable: { index: number; why: string }[] = [];
  for (const [index, { code, reads }] of examples.entries()) {
    const stated = readStated(reads);
    const tidy = tidyCode(code);
    const bare = [...tidy].filter(isSign).join('');
    if ('unknown' in stated) unusable.push({ index, why: `"${stated.unknown}" is neither a date nor a place code` });
    else if (bare.length === 0 || bare.length > 24)
      unusable.push({ index, why: 'the code has no or too many characters' });
    else facts.push({ index, code, reads, bare, ...marksOf(tidy), stated, place: stated.places[0] ?? null });
  }
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

const within = (fact: Fact, span: Span | null): boolean =>
  span !== null && fact.stated.spans.some((stated) => spanHolds(stated, span));

const lastNumber: Record<YearPart, number> = { month: 12, week: 53, 'sunday-week': 53, quarter: 4, dayOfYear: 366 };

export function partSpan(part: YearPart, year: number, number: number): Span | null {
  if (number < 1 || number > lastNumber[part]) return null;
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

/** Years that any stated date touches; the week year of a date at a year's end may be the next or the one before. */
export function yearsTouched(fact: Fact): number[] {
  const years = new Set<number>();
  for (const { from, to } of fact.stated.spans) {
    const first = Number((from ?? to ?? '').slice(0, 4));
    const last = Number((to ?? from ?? '').slice(0, 4));
    for (let year = first; year <= Math.min(last, first + 30); year++) years.add(year);
  }
  return [...years];
}

export interface DatedNumber {
  year: number;
  number: number;
}

/** What a fact allows for a part of the year: each year with each number whose span lies in a stated date. */
export function numbersAllowed(fact: Fact, part: YearPart): DatedNumber[] {
  const around = part === 'week' || part === 'sunday-week' ? [-1, 0, 1] : [0];
  const years = [...new Set(yearsTouched(fact).flatMap((year) => around.map((step) => year + step)))];
  return years.flatMap((year) =>
    partsOfYear(part, year).flatMap((span, step) => (within(fact, span) ? [{ year, number: step + 1 }] : [])),
  );
}

/** Whether the fact is content with a whole year. */
export const yearSuffices = (fact: Fact, year: number): boolean => within(fact, yearSpan(year));

/** Days (month and day) that a fact allows. */
export function daysAllowed(fact: Fact): { year: number; month: number; day: number }[] {
  return yearsTouched(fact).flatMap((year) =>
    Array.from({ length: 12 }, (_, step) => step + 1).flatMap((month) =>
      Array.from({ length: daysInMonth(year, month) }, (_, step) => step + 1).flatMap((day) =>
        within(fact, daySpan(isoDate(year, month, day))) ? [{ year, month, day }] : [],
      ),
    ),
  );
}
