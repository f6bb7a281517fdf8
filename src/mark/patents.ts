import { partialDateSpan } from '../span';
import { type MarkFound, rowSource } from './define';
import { numberWords, placeInSeries, type SeriesRow } from './number-series';
import table from './tables/us-patents.json';

const rowsOf = (rows: readonly (string | number)[][]): SeriesRow[] =>
  rows.map(([year, first, verified]) => ({
    since: String(year),
    first: Number(first),
    verified: verified === 'stored',
  }));

/** Years by first number, and the days on which each millionth patent was granted. Source: see tables/us-patents.json. */
const milestones: SeriesRow[] = table.milestones.map(([first, day]) => ({
  since: String(day),
  first: Number(first),
  verified: true,
}));
const utilityYears = rowsOf(table.utility);
const designYears = rowsOf(table.design);
const utilityBounds = [...utilityYears, ...milestones].sort((a, b) => a.first - b.first);

export interface Grant {
  number: number;
  /** Year of the grant by the table. */
  year: number;
  /** The number lies beyond the table: granted in that year or later. */
  beyond: boolean;
  verified: boolean;
  /** First day that is firm: the last verified row or milestone at or below the number; null when there is none. */
  firmSince: string | null;
}

/** When a US patent of a series was granted; null for a number below 1. Numbers date the grant, not the making. */
export function grantOf(series: 'utility' | 'design', number: number): Grant | null {
  const years = series === 'utility' ? utilityYears : designYears;
  const place = Number.isInteger(number) ? placeInSeries(years, number) : null;
  if (!place) return null;
  const next = years[years.indexOf(place.row) + 1];
  const firm = placeInSeries(series === 'utility' ? utilityBounds : designYears, number)?.firm ?? null;
  return {
    number,
    year: Number(place.row.since),
    beyond: place.beyond,
    verified: place.row.verified && next?.verified === true,
    firmSince: firm ? (partialDateSpan(firm.since)?.from ?? null) : null,
  };
}

const caution = 'A patent number dates the grant; the piece may be decades younger.';
const otherCountry = 'The words do not say of which country the patent is; this is its date if it is a US patent.';

/**
 * What a patent number says: a firm "not before" by the last verified row, and, where the year itself is from memory,
 * that year softly. All soft where the words do not name the United States.
 */
export function foundByGrant(
  grant: Grant,
  series: 'utility' | 'design',
  at: { start: number; end: number },
  isUs: boolean,
): MarkFound[] {
  const name = `US ${series === 'design' ? 'design patent D' : 'patent '}${numberWords(grant.number)}`;
  const granted = `${name} was granted in ${grant.year}${grant.beyond ? ' or later' : ''}`;
  const cautions = isUs ? caution : `${otherCountry} ${caution}`;
  const found = (from: string, firm: boolean, statement: string): MarkFound => ({
    ...at,
    spans: [{ from, to: null, precision: 'range' }],
    strength: firm && isUs ? 'hard' : 'soft',
    verified: firm,
    source: rowSource(table.source, firm),
    statement,
    caution: cautions,
  });
  const since = `${grant.year}-01-01`;
  if (grant.verified) return [found(since, true, `${granted}, so what carries it is no older`)];
  const byMemory = found(since, false, `${granted}, so what carries it is no older`);
  const firm = grant.firmSince;
  return firm ? [found(firm, true, `${name} was granted no earlier than ${firm.slice(0, 4)}`), byMemory] : [byMemory];
}
