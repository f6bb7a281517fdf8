import type { Finding } from '../check/types';
import { compareWeights, type Weight, weighFinding } from '../evidence';
import type { Case } from './types';

export interface WeighedFinding {
  finding: Finding;
  weight: Weight;
}

/** Every finding with its weight, the heaviest first; what weighs the same keeps the order of the checks. */
export const weighedFindings = ({ outcomes, evidence }: Case): WeighedFinding[] =>
  outcomes
    .flatMap((outcome) => (outcome.outcome === 'speaks' ? outcome.findings : []))
    .map((finding) => ({ finding, weight: weighFinding(finding, evidence) }))
    .sort((a, b) => compareWeights(b.weight, a.weight));
