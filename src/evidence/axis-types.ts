import type { Stretch } from './reasoning-types';
import type { Known } from './told';
import type { Dating, Stated } from './types';

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
  kind: Dating['from']['kind'] | 'country' | 'quoted';
  /** What it states, for its sentence. */
  stated: Stated;
  /** The part that a dated construction fact tells of, 'model' for the years of a model; null for all else. */
  about: string | null;
  strength: Dating['strength'];
  /** Where the statement comes from. */
  source: Dating['source'];
  /** Bars on the axis; empty when all dates lie beyond it. */
  bars: AxisBar[];
  /** Dates that lie wholly beyond an end of the axis. */
  beyond: ('before' | 'after')[];
  /**
   * How it stands to the others: in every one of the largest agreeing sets, on one side of a tie, in none of them and
   * apart from another, or in none of them and apart from none.
   */
  stands: 'agrees' | 'one-side' | 'apart' | 'alone';
}

export interface AxisLayout {
  /** First and last year shown, both whole. */
  years: [number, number];
  ticks: { year: number; at: number }[];
  rows: AxisRow[];
  /**
   * Where the largest agreeing sets agree and who says so, one entry for each side of a tie, and how many more sides
   * there are than are named; empty when no two agree that could have excluded each other.
   */
  agreeing: { bars: AxisBar[]; sides: (Stretch & { by: Known[] })[]; more: number };
}
