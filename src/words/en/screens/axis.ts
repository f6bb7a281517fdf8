import { bareParts } from '../parts';
import { count } from './count';

/** In a tie every side is named: to leave one out would take a side. */
function equalSides(sides: readonly string[], more: number): string[] {
  const named = sides.map((side) => `as many on ${side}`);
  const all = more === 0 ? named : [...named, `as many on ${count(more, 'other date', 'other dates')}`];
  return all.map((words, at) => (at === all.length - 1 ? `and ${words}` : words));
}

/** The words of the time axis. */
export const axisStrings = {
  title: 'When it was made',
  chart: (first: number, last: number, agreed: string) =>
    `Time axis from ${first} to ${last} with one bar for each statement on date. ${agreed} All of it stands in the table below.`,
  agreed: (facts: number, sides: readonly string[], more: number) =>
    `${[`${facts} facts agree on ${sides[0]}`, ...equalSides(sides.slice(1), more)].join(', ')}.`,
  noneAgree: 'No two facts agree on a date.',
  hard: 'firm',
  soft: 'loose',
  softMeans: 'loose: a habit, a rough date, or not verified',
  stretch: 'where most facts agree',
  moreRows: (number: number) => `${count(number, 'more statement', 'more statements')} in the table.`,
  table: 'The same as a table',
  statement: 'Statement',
  dates: 'Dates',
  stands: 'Stands',
  source: 'Source',
  agrees: { all: 'agrees with most', 'one-side': 'on one of the equal sides', none: 'does not fit the others' },
  kinds: {
    claim: 'Listing',
    country: 'The country existed',
    reading: 'Code',
    quoted: 'Code as quoted',
    system: 'Code system',
    plant: 'Plant',
    mark: 'Mark',
    construction: 'Construction',
  },
  /** What a row of a dated construction fact is of. */
  about: { ...bareParts, model: 'model' },
  beyond: { before: 'earlier than this axis', after: 'later than this axis' },
} as const;
