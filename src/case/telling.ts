import type { Finding } from '../check/types';
import type { Informs } from '../evidence';
import type { Case } from './types';

/** Why an agreement tells something. */
export interface Telling {
  informs: Informs;
  /** Whether it counts where several facts agree; null for what is no date and no place, which are never added up. */
  narrows: boolean | null;
}

/** Why the facts that an agreement rests on could have come out otherwise, each way once; none for any other finding. */
export function tellingsOf(
  { kind, evidence: named, claims }: Finding,
  { evidence, reasoning }: Pick<Case, 'evidence' | 'reasoning'>,
): Telling[] {
  if (kind !== 'agreement') return [];
  // One that names a single statement, or none, names the other side by the claim that it comes from.
  const meant = named.length > 1 ? [] : evidence.filter(({ from }) => claims.includes(from.id)).map(({ id }) => id);
  const ids = new Set([...named, ...meant]);
  const told = new Map<Informs, Telling>();
  for (const { evidence: pair, over, informs, narrows } of reasoning?.agreements ?? []) {
    // Where several facts agree, what does not count there is not told.
    if (!pair.every((id) => ids.has(id)) || (named.length > 2 && !narrows)) continue;
    const isCounted = over === 'date' || over === 'place';
    const before = told.get(informs)?.narrows ?? false;
    told.set(informs, { informs, narrows: isCounted ? before || narrows : null });
  }
  return [...told.values()];
}
