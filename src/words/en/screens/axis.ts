import { filePart } from '../parts';
import { count } from './count';

const names = { read: 'the code', seen: 'the marks', said: 'the listing' } as const;
/** Who agrees with itself. */
const alone = { read: 'the codes', seen: 'the marks', said: 'the words of the listing' } as const;
type Known = keyof typeof names;

const agree = ({ by, on }: { by: readonly Known[]; on: string }): string => {
  const all = by.length === 1 ? by.map((one) => alone[one]) : by.map((one) => names[one]);
  const last = all.at(-1) ?? '';
  return `${all.length > 1 ? `${all.slice(0, -1).join(', ')} and ${last}` : last} agree on ${on}`;
};

/** The words of the time axis. */
export const axisStrings = {
  title: 'When it was made',
  chart: (first: number, last: number, agreed: string) =>
    `Time axis from ${first} to ${last} with one bar for each statement on date. ${agreed} All of it stands in the table below.`,
  /** In a tie every side is named: to leave one out would take a side. */
  agreed(sides: readonly { by: readonly Known[]; on: string }[], more: number) {
    const all = [
      ...sides.map(agree),
      ...(more === 0 ? [] : [`as many on ${count(more, 'other date', 'other dates')}`]),
    ];
    const words = all.length > 1 ? `${all.slice(0, -1).join(', ')}, and ${all.at(-1)}` : (all[0] ?? '');
    return `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  },
  noneAgree: 'No two facts that could exclude each other agree on a date.',
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
  standing: {
    agrees: 'agrees with most',
    'one-side': 'on one of the equal sides',
    apart: 'does not fit all the others',
    alone: 'speaks against no other',
  },
  kinds: {
    claim: 'Listing',
    country: 'The country existed',
    reading: 'Code',
    quoted: 'Code as quoted',
    system: 'Code system',
    plant: 'Workshop',
    mark: 'Mark',
    construction: 'Construction',
  },
  /** What a row of a dated construction fact is of. */
  about: (part: string) => (part === 'model' ? 'model' : filePart(part)),
  beyond: { before: 'earlier than this axis', after: 'later than this axis' },
} as const;
