import type { Evidence } from './types';

/** A stretch of the axis; 0 is its first day, 1 the day after its last. An open side runs on beyond the axis. */
export interface AxisBar {
  start: number;
  end: number;
  opensLeft: boolean;
  opensRight: boolean;
}

export interface AxisRow {
  /** Ids of the evidence that the row shows: one, or the same fact said with the same dates again. */
  evidence: string[];
  /** 'country': the days in which the country claimed existed; 'quoted': a code that only the listing tells. */
  kind: Evidence['from']['kind'] | 'country' | 'quoted';
  /** Full sentence. */
  statement: string;
  /** Dates in words: "January 1995 or week 2 of 1995". */
  words: string;
  /** What a dated construction fact tells of: "lining", "model"; null for all else. */
  about: string | null;
  strength: Evidence['strength'];
  /** Where the statement comes from. */
  source: Evidence['source'];
  places: string[];
  /** Bars on the axis; empty when all dates lie beyond it. */
  bars: AxisBar[];
  /** Dates that lie wholly beyond an end of the axis. */
  beyond: ('before' | 'after')[];
  /** Whether the row belongs to every one of the largest agreeing sets, to one side of a tie, or to none of them. */
  agrees: 'all' | 'one-side' | 'none';
}

export interface AxisLayout {
  /** First and last year shown, both whole. */
  years: [number, number];
  ticks: { year: number; at: number }[];
  rows: AxisRow[];
  /**
   * Where the largest agreeing sets agree, in words, one entry for each side of a tie, and how many more sides there
   * are than are named; empty when nothing agrees with anything.
   */
  agreeing: { bars: AxisBar[]; sides: string[]; more: number; facts: number };
}
