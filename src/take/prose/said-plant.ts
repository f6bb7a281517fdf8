import type { OwnFields } from '../propose';
import { plainCode } from '../said/code';
import { type SaidPeriod, usedOf } from '../said/period';
import type { SaidPlace } from '../said/place';
import type { Doubt } from '../types';

export interface SaidPlant {
  own: Extract<OwnFields, { kind: 'plant' }>;
  doubts: (Doubt | false)[];
  /** Place of the code in the sentence. */
  at: number;
  /** Whether it sets another's statement right, who may agree. */
  corrects?: boolean;
}

/** Letters behind a code within which a sentence tells what it stands for, and when. */
export const farthestTold = 120;

/** A code as written and the place beside it, from the first of the periods on that is more than a year. */
export function plantBeside(written: string, place: SaidPlace, periods: readonly SaidPeriod[], at: number): SaidPlant {
  const { backwards, ...used } = usedOf(periods.filter(({ form }) => form !== 'year').slice(0, 1));
  const { code, lookAlike } = plainCode(written);
  return {
    own: { kind: 'plant', code, ...place, ...used },
    doubts: [lookAlike && 'look-alike', backwards && 'backwards'],
    at,
  };
}
