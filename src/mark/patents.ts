import { partialDateSpan } from '../span';
import { type MarkFound, rowSource } from './define';
import { placeInSeries, type SeriesRow } from './number-series';
import type { MarkCaution, MarkSays } from './says';
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
  const { number, year, beyond } = grant;
  const granted: MarkSays = { kind: 'grant', series, number, year, beyond };
  const cautions: MarkCaution[] = [...(isUs ? [] : [{ kind: 'other-country' as const }]), { kind: 'dates-grant' }];
  const found = (from: string, firm: boolean, says: MarkSays): MarkFound => ({
    ...at,
    spans: [{ from, to: null, precision: 'range' }],
    strength: firm && isUs ? 'hard' : 'soft',
    verified: firm,
    source: rowSource(table.source, firm),
    says,
    cautions,
  });
  const since = `${year}-01-01`;
  if (grant.verified) return [found(since, true, granted)];
  const byMemory = found(since, false, granted);
  const firm = grant.firmSince;
  if (!firm) return [byMemory];
  return [found(firm, true, { kind: 'grant-since', series, number, year: Number(firm.slice(0, 4)) }), byMemory];
}
