import type { ClaimOf } from '../claim/types';
import { isOnReplacedPart } from '../evidence';
import type { MarkRead } from '../mark/types';
import type { FindingKind } from './types';

/** Marks that say something of the date; not those of a part that the seller says was replaced. */
export function datedMarks(marks: MarkRead[], replaced: ClaimOf<'replaced'>[]): MarkRead[] {
  const parts = new Set(replaced.flatMap((claim) => claim.parts));
  return marks.filter((mark) => mark.spans.length > 0 && !isOnReplacedPart(mark, parts));
}
/** Marks that a photo shows and that say something of the place: the text is not compared with itself. */
export const marksInPhotos = (marks: MarkRead[]): MarkRead[] =>
  marks.filter(({ places, foundIn }) => places.length > 0 && foundIn === 'photo');

const heaviest: FindingKind[] = ['contradiction', 'doubt', 'gap', 'agreement'];

/**
 * One number or wording may give several statements, a hard bound and a softer guess. What stands against the same
 * thing is said once for it, the heaviest.
 */
export function oncePerMark<S extends { kind: FindingKind }>(
  said: { mark: MarkRead; against: string; speech: S }[],
): S[] {
  const kept = new Map<string, S>();
  for (const { mark, against, speech } of said) {
    const key = [mark.mark, mark.photoId, mark.words, against].join('\n');
    const before = kept.get(key);
    if (!before || heaviest.indexOf(speech.kind) < heaviest.indexOf(before.kind)) kept.set(key, speech);
  }
  return [...kept.values()];
}
