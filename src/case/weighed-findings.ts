import type { Finding } from '../check/types';
import { compareWeights, type Weight, weighFinding } from '../evidence';
import { standingFindings } from './set-aside';
import { type Telling, tellingsOf } from './telling';
import type { Case } from './types';

export interface WeighedFinding {
  finding: Finding;
  weight: Weight;
  /** Of an agreement: why it could have come out otherwise. */
  tells: Telling[];
}

/**
 * Every finding that the buyer did not set aside with its weight, the heaviest first; what weighs the same keeps the order
 * of the checks.
 */
export const weighedFindings = (
  kase: Pick<Case, 'outcomes' | 'evidence' | 'reasoning' | 'corrections'>,
): WeighedFinding[] =>
  standingFindings(kase)
    .map((finding) => ({ finding, weight: weighFinding(finding, kase.evidence), tells: tellingsOf(finding, kase) }))
    .sort((a, b) => compareWeights(b.weight, a.weight));
