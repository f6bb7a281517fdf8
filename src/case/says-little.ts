import { checks, type Finding } from '../check';
import type { Evidence } from '../evidence';

const ofSeller = new Set(checks.flatMap(({ id, family }) => (family === 'seller' ? [id] : [])));
/** Evidence that says in which years something was so; open at an end it excludes half of all years at most. */
const periods: readonly Evidence['from']['kind'][] = ['construction', 'plant', 'system'];

/**
 * Whether an agreement could hardly have come out otherwise: terms and standing of the seller say nothing of the piece,
 * and a period without an end holds nearly every date.
 */
export const saysLittle = (finding: Finding, evidence: readonly Evidence[]): boolean =>
  ofSeller.has(finding.check) ||
  evidence.some(
    ({ id, from, spans }) =>
      periods.includes(from.kind) &&
      (finding.evidence.includes(id) || finding.claims.includes(from.id)) &&
      spans.some((span) => span.from === null || span.to === null),
  );
