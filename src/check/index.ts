import type { Facts } from './facts';
import { checks } from './registry';
import type { Outcome } from './types';

export { isCopy } from './copies';
export type { Facts } from './facts';
export type { Check, Family } from './frame';
export { families } from './frame';
export type { Ask, Finding, FindingKind, Outcome } from './types';
export { listingText } from './words';
export { checks };

const noListing = {
  list: 'the page is a list of listings, not one listing',
  none: 'the page offers no listing',
} as const;

/**
 * Runs every registered check on one case's facts, in the order of the registry. Pure. On a page that is no listing
 * none can tell.
 */
export function runChecks(facts: Facts): Outcome[] {
  const { kind } = facts.listing;
  if (kind === 'listing') return checks.map((check) => check.judge(facts));
  return checks.map(({ id }) => ({ outcome: 'cannot-tell', check: id, why: noListing[kind] }));
}
