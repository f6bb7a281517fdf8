import type { Evidence, Pair, RuleId } from '../evidence';
import type { PairOf } from './pairs';

/** A maker's smallest new price, and how what is asked stands to it. */
interface Floor {
  id: string;
  floor: { amount: number; currency: string; year: number };
  pair: Pair;
}

/** The one of the maker's smallest new prices that speaks most for the price asked; null where none is in a like currency. */
export function kindestFloor(asked: Evidence | undefined, rule: RuleId, evidence: readonly Evidence[], pairOf: PairOf) {
  const floors = evidence.flatMap(({ id, says }): Floor[] => {
    const pair = asked && pairOf(rule, asked.id, id);
    if (!pair || (says.kind !== 'floor' && says.kind !== 'floor-then')) return [];
    return [{ id, floor: { amount: says.amount, currency: says.currency, year: says.year }, pair }];
  });
  return floors.sort((a, b) => (b.pair.share ?? 0) - (a.pair.share ?? 0))[0] ?? null;
}
