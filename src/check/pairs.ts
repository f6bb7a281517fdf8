import type { Pair, RuleId } from '../evidence';
import type { FindingKind } from './types';

/** Looks up how two statements stand to each other by a rule of the reasoning. */
export type PairOf = (rule: RuleId, left: string, right: string) => Pair | undefined;

export function pairLookup(pairs: readonly Pair[]): PairOf {
  const keyOf = (...parts: string[]) => parts.join('\n');
  const known = new Map(pairs.map((pair) => [keyOf(pair.rule, pair.left, pair.right), pair]));
  return (rule, left, right) => known.get(keyOf(rule, left, right));
}

/** What a pair is as a finding, if it is one: only what cannot be is a contradiction. */
export function pairKind(pair: Pair | undefined): Exclude<FindingKind, 'gap'> | null {
  if (!pair || pair.withheld) return null;
  if (pair.relation === 'conflicts') return pair.hard ? 'contradiction' : 'doubt';
  return pair.relation === 'agrees' && pair.informs !== null ? 'agreement' : null;
}
