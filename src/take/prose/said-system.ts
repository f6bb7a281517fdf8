import type { Layout } from '../../maker/types';
import type { OwnFields } from '../propose';
import type { SaidPeriod } from '../said/period';
import type { Doubt } from '../types';
import type { Sentence } from './sentences';

export interface SaidSystem {
  own: OwnFields;
  doubts: (Doubt | false)[];
  /** First and last sentence that tell it. */
  sentences: Sentence[];
}

/** What the heading of a section tells of the codes below it: "YYMM (1984–1985)". */
export interface Section {
  period: SaidPeriod;
  layout: Layout | null;
}
