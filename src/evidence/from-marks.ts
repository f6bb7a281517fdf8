import type { Claim, Part } from '../claim/types';
import type { MarkRead } from '../mark/types';
import { evidenceId } from './ids';
import type { Dating } from './types';

/**
 * Public marks that date or place the piece. A mark on the piece keeps its own strength: a row from memory came in
 * soft. A mark that only the listing's words name is the seller's account of it, and soft. Words in the listing that
 * are a claim as well ("made in West Germany") are one fact, not two: they share the claim's basis.
 */
export function fromMarks(marks: readonly MarkRead[], claims: readonly Claim[], claimed: readonly Dating[]): Dating[] {
  const parts = new Set(claims.flatMap((claim) => (claim.kind === 'replaced' ? claim.parts : [])));
  return marks
    .filter((mark) => !isOnReplacedPart(mark, parts))
    .filter((mark) => mark.spans.length > 0 || mark.places.length > 0)
    .map((mark) => ({
      id: evidenceId.mark(mark.id),
      about: mark.spans.length === 0 ? 'place' : mark.places.length === 0 ? 'date' : 'date-and-place',
      from: { kind: 'mark', id: mark.id },
      basis: claimBasis(mark, claims, claimed) ?? `mark:${plain(mark.words)}`,
      spans: mark.spans,
      places: mark.places,
      strength: mark.verified && mark.foundIn === 'photo' ? mark.strength : 'soft',
      says: { kind: 'mark', inText: mark.foundIn === 'listing', words: mark.words, tells: mark.says },
      source: mark.source,
    }));
}

/** A fastener's mark dates the fastener: where the seller says that it was replaced, it says nothing of the piece. */
export const isOnReplacedPart = (mark: Pick<MarkRead, 'mark'>, replaced: ReadonlySet<Part>): boolean =>
  mark.mark === 'fastener' && (['zip', 'lock', 'hardware'] as const).some((part) => replaced.has(part));

const plain = (words: string) => words.replace(/\s+/g, ' ').trim().toLowerCase();

function claimBasis(mark: MarkRead, claims: readonly Claim[], claimed: readonly Dating[]): string | undefined {
  if (mark.foundIn !== 'listing') return undefined;
  const words = plain(mark.words);
  const same = claims.find((claim) => {
    if (claim.kind !== 'origin') return false;
    const said = plain(claim.words);
    return said.includes(words) || words.includes(said);
  });
  return same && claimed.find((piece) => piece.from.kind === 'claim' && piece.from.id === same.id)?.basis;
}
