import type { ClaimOf } from '../claim/types';
import { isOnReplacedPart } from '../evidence';
import type { MarkRead } from '../mark/types';
import type { FindingKind } from './types';
import { quote } from './wording';

/** Marks that say something of the date; not those of a part that the seller says was replaced. */
export function datedMarks(marks: MarkRead[], replaced: ClaimOf<'replaced'>[]): MarkRead[] {
  const parts = new Set(replaced.flatMap((claim) => claim.parts));
  return marks.filter((mark) => mark.spans.length > 0 && !isOnReplacedPart(mark, parts));
}
/** Marks that say something of the place. */
export const placedMarks = (marks: MarkRead[]): MarkRead[] => marks.filter(({ places }) => places.length > 0);

/** "photo 3 shows “Pat. 4,123,456”" or "the text names “Pat. 4,123,456”", with a note when its row is from memory. */
export function markWords(mark: MarkRead, photoWords: (id: string) => string): string {
  const where = mark.photoId === null ? 'the text names' : `${photoWords(mark.photoId)} shows`;
  return `${where} ${quote(mark.words)}${mark.verified ? '' : ' (rule not verified)'}`;
}

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
