import type { Facts } from './facts';
import { checks } from './registry';
import type { Outcome } from './types';

export type { Facts } from './facts';
export type { Check, Family } from './frame';
export { families } from './frame';
export type { Ask, Finding, FindingKind, Outcome } from './types';
export { listingText } from './words';
export { checks };

/** Runs every registered check on one case's facts, in the order of the registry. Pure. */
export const runChecks = (facts: Facts): Outcome[] => checks.map((check) => check.judge(facts));
