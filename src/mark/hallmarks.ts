import { type Span, unionOf, yearSpan, yearsSpan } from '../span';
import table from './tables/uk-hallmarks.json';

export type Office = 'London' | 'Birmingham' | 'Sheffield' | 'Edinburgh';
/** @internal */
export const offices: readonly Office[] = ['London', 'Birmingham', 'Sheffield', 'Edinburgh'];

export interface LetterYear {
  /** The year in which the letter began. Before 1975 it was used into the next year. */
  year: number;
  verified: boolean;
}

/** The first year that the tables cover: an office's earlier letters are not in them. */
export const firstLetterYear = 1850;

/**
 * Every year in which an office used a date letter, from 1850 on, as a small or a capital letter as given. A letter
 * means nothing without the office, and the shape of the shield, which decides between the years, is not read.
 */
export function letterYears(office: Office, letter: string): LetterYear[] {
  const old = table.offices[office].cycles.flatMap(({ first, last, letters }) =>
    [...letters]
      .map((one, at) => ({ one, year: first + at }))
      .filter(({ one, year }) => one === letter && year >= firstLetterYear && year <= last)
      .map(({ year }) => ({ year, verified: false })),
  );
  const uniform = table.uniform
    .filter(([, one]) => one === letter)
    .map(([year]) => ({ year: Number(year), verified: true }));
  return [...old, ...uniform];
}

/** The spans of those years: two calendar years each before 1975, one from then on. */
export const letterSpans = (years: readonly LetterYear[]): Span[] =>
  unionOf(years.map(({ year }) => (year < 1975 ? yearsSpan(year, year + 1) : yearSpan(year))));

const metals = ['gold', 'silver', 'platinum', 'palladium'] as const;
export type Metal = (typeof metals)[number];

export interface Fineness {
  /** Whether the number is a legal fineness of the metal in a UK hallmark now. */
  legal: boolean;
  /** First day of its use in a UK hallmark where it was not one before 1999; null when it was, or is not one. */
  ukSince: string | null;
}

/** What a fineness number (parts in a thousand) can say of a UK hallmark. Source: Hallmarking Act 1973, Schedule 2, as at 1991 and now. */
export function finenessOf(metal: Metal, parts: number): Fineness {
  const now = (table.finenessNow[metal] as number[]).includes(parts);
  const before = metal === 'palladium' ? [] : table.finenessBefore1999[metal].map((one) => Math.floor(Number(one)));
  return { legal: now, ukSince: now && metal !== 'palladium' && !before.includes(parts) ? '1999-01-01' : null };
}

export const hallmarkSource = table.source;
export const convention = table.convention;
