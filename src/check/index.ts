import type { Facts } from './facts';
import type { Check } from './frame';
import { because } from './reasons';
import { type CheckData, checks } from './registry';
import type { Outcome } from './types';

export type { AskData, AskId, ChangedSubject } from './asks';
export { type Change, changesSince } from './changes';
export type { NearCode, ReadingSaid, ShownCode } from './code-data';
export { isCopy } from './copies';
export type { ClaimedDate, DatedMark } from './date-data';
export type { DatedSaid } from './fact/date';
export type { Facts } from './facts';
export type { Check, Family } from './frame';
export { families } from './frame';
export { photoNumber } from './photo-places';
export { groundKind } from './photo-stock-like';
export type { PlacedMark } from './place-data';
export type { ReasonData, ReasonId } from './reasons';
export type { Ask, Finding, FindingKind, Outcome, Reason } from './types';
export type { CheckData };
export { checks };

/**
 * Runs every registered check on one case's facts, in the order of the registry. Pure, and never throws: a check that
 * breaks has failed, and all others stand. On a page that is no listing none can tell.
 */
export function runChecks(facts: Facts, all: readonly Check[] = checks): Outcome[] {
  const { kind } = facts.listing;
  if (kind === 'listing') return all.map((check) => judged(check, facts));
  return all.map(({ id }) => ({ outcome: 'cannot-tell', check: id, why: because('no-listing', { page: kind }) }));
}

/** A message may repeat what stands in the page: one line is enough to tell the fault. */
const longestMessage = 200;

function judged(check: Check, facts: Facts): Outcome {
  try {
    return check.judge(facts);
  } catch (fault) {
    const words = fault instanceof Error ? fault.message : String(fault);
    return { outcome: 'failed', check: check.id, why: words.replace(/\s+/g, ' ').slice(0, longestMessage) };
  }
}
