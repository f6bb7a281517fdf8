import type { Facts, Unmet } from '../facts';

/** A fact as it was told: what it is, or why nobody can tell. */
export type Told<V> = { is: V } | Unmet;

/** Asks for another fact, which is computed once, whoever asks first. */
export type AskFact = <V>(fact: Fact<V>) => Told<V>;

/** Something that several checks need to know of a case, computed in one place. */
export interface Fact<V> {
  compute: (facts: Facts, ask: AskFact) => Told<V>;
}

export const defineFact = <V>(compute: Fact<V>['compute']): Fact<V> => ({ compute });

/** What was told of each case so far. Its facts do not change, and go when the case goes. */
const told = new WeakMap<Facts, Map<Fact<unknown>, Told<unknown>>>();

/** A fact of one case, computed when it is first asked for. */
export function tell<V>(fact: Fact<V>, facts: Facts): Told<V> {
  const known = told.get(facts) ?? new Map<Fact<unknown>, Told<unknown>>();
  told.set(facts, known);
  const before = known.get(fact);
  if (before) return before as Told<V>;
  const now = fact.compute(facts, (other) => tell(other, facts));
  known.set(fact, now);
  return now;
}
