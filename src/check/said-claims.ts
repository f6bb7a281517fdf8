import * as z from 'zod';
import type { Claim } from '../claim/types';
import type { Speech } from './frame';
import type { Ask, FindingKind } from './types';

/** What the seller says of the piece, without what is denied of it. */
export const saidOf = <C extends { polarity: 'is' | 'is-not' }>(claims: readonly C[]): C[] =>
  claims.filter(({ polarity }) => polarity === 'is');

/** A finding quotes no more of the seller's words than these. */
const mostQuotes = 3;

/** The different words of some claims, the first few of them, and the claims that they stand in. */
function firstOf(claims: readonly Pick<Claim, 'id' | 'words'>[]): {
  data: { words: string[] };
  claims: string[];
} {
  const words = [...new Set(claims.map((claim) => claim.words))].slice(0, mostQuotes);
  return { data: { words }, claims: claims.filter((claim) => words.includes(claim.words)).map(({ id }) => id) };
}

/** What the sentences of a check are made with that tells no more than the seller's words. */
export const saidData = z.strictObject({ words: z.array(z.string()) });

/** What such a check says: nothing where nothing is said. */
export const tellSaid = (
  kind: FindingKind,
  said: readonly Pick<Claim, 'id' | 'words'>[],
  ask: Ask,
): Speech<z.infer<typeof saidData>>[] => (said.length === 0 ? [] : [{ kind, ...firstOf(said), asks: [ask] }]);
