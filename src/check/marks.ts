import type { MarkRead } from '../mark/types';
import type { Speech } from './frame';
import { quote } from './wording';

/** Marks that say something of the date. */
export const datedMarks = (marks: MarkRead[]): MarkRead[] => marks.filter(({ spans }) => spans.length > 0);
/** Marks that say something of the place. */
export const placedMarks = (marks: MarkRead[]): MarkRead[] => marks.filter(({ places }) => places.length > 0);

/** "photo 3 shows “Pat. 4,123,456”" or "the text names “Pat. 4,123,456”", with a note when its row is from memory. */
export function markWords(mark: MarkRead, photoWords: (id: string) => string): string {
  const where = mark.photoId === null ? 'the text names' : `${photoWords(mark.photoId)} shows`;
  return `${where} ${quote(mark.words)}${mark.verified ? '' : ' (rule not verified)'}`;
}

const heaviest: Speech['kind'][] = ['contradiction', 'doubt', 'gap', 'agreement'];

/**
 * One number or wording may give several statements, a hard bound and a softer guess. What stands against the same
 * thing is said once for it, the heaviest.
 */
export function oncePerMark(said: { mark: MarkRead; against: string; speech: Speech }[]): Speech[] {
  const kept = new Map<string, Speech>();
  for (const { mark, against, speech } of said) {
    const key = [mark.mark, mark.photoId, mark.words, against].join('\n');
    const before = kept.get(key);
    if (!before || heaviest.indexOf(speech.kind) < heaviest.indexOf(before.kind)) kept.set(key, speech);
  }
  return [...kept.values()];
}
