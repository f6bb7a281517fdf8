import type * as z from 'zod';
import type { Evidence, Pair, RuleId } from '../evidence';
import type { floorSchema } from './money';
import type { PairOf } from './pairs';

/** A maker's smallest new price, and how what is asked stands to it. */
interface Floor {
  id: string;
  floor: z.infer<typeof floorSchema>;
  sources: readonly string[];
  pair: Pair;
}

/** The one of the maker's smallest new prices that speaks most for the price asked; null where none is in a like currency. */
export function kindestFloor(asked: Evidence | undefined, rule: RuleId, evidence: readonly Evidence[], pairOf: PairOf) {
  const floors = evidence.flatMap(({ id, says, source }): Floor[] => {
    const pair = asked && pairOf(rule, asked.id, id);
    if (!pair || (says.kind !== 'floor' && says.kind !== 'floor-then' && says.kind !== 'floor-like')) return [];
    const { kind: _kind, maker: _maker, ...floor } = says;
    return [{ id, floor, sources: source.kind === 'maker-file' ? source.sources : [], pair }];
  });
  return floors.sort((a, b) => (b.pair.share ?? 0) - (a.pair.share ?? 0))[0] ?? null;
}
