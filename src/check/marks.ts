import type { MarkRead } from '../mark/types';
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
