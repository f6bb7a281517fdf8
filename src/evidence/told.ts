import * as z from 'zod';
import type { Pair } from './pairs';
import type { Dating } from './types';

/** Whence it is known: read from a stamp, seen on the piece, or said by the seller. */
export type Known = 'read' | 'seen' | 'said';

const ids = z.array(z.string());
const known = z.strictObject({ read: ids, seen: ids, said: ids });
/** Ids of the evidence that counts where several facts agree on a date or a place, one for each fact, by whence it is known. */
export const toldSchema = z.strictObject({ date: known, place: known });
export type Told = z.infer<typeof toldSchema>;

function knownOf({ says }: Dating): Known {
  if (says.kind === 'code') return says.from === 'claim' ? 'said' : 'read';
  return says.kind === 'mark' && !says.inText ? 'seen' : 'said';
}

/**
 * Of facts that agree, those of which some two could have excluded each other: the seller's year and the seller's own
 * country cannot, and an open period hardly ever does. What was read, what was seen and what the seller says are told
 * apart and never added up.
 */
export function toldOf(pieces: readonly Dating[], pairs: readonly Pair[]): Told {
  const here = new Set(pieces.map(({ id }) => id));
  const met = pairs.filter(({ left, right, narrows }) => narrows && here.has(left) && here.has(right));
  const over = (one: Pair['over']) =>
    countedIn(
      pieces,
      met.filter((pair) => pair.over === one),
    );
  return { date: over('date'), place: over('place') };
}

function countedIn(pieces: readonly Dating[], met: readonly Pair[]): Told['date'] {
  const counted = new Set(met.flatMap(({ left, right }) => [left, right]));
  const told: Told['date'] = { read: [], seen: [], said: [] };
  const facts = new Set<string>();
  for (const piece of pieces) {
    if (!counted.has(piece.id) || facts.has(piece.basis)) continue;
    facts.add(piece.basis);
    told[knownOf(piece)].push(piece.id);
  }
  return told;
}

export const isTold = ({ read, seen, said }: Told['date']): boolean => read.length + seen.length + said.length > 0;
