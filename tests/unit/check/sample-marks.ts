import type { MarkRead } from '../../../src/mark/types';

/** A hard, verified mark that photo 1 shows. */
export const markRead = (rest: Partial<MarkRead> = {}): MarkRead => ({
  id: 'patent-p1-0',
  mark: 'us-utility-patent',
  words: 'Pat. 5,700,000',
  foundIn: 'photo',
  photoId: 'p1',
  spans: [],
  places: [],
  strength: 'hard',
  verified: true,
  source: { kind: 'published', text: 'sample table of patent numbers' },
  says: { kind: 'grant', series: 'utility', number: 5_700_000, year: 1998, beyond: false },
  cautions: [],
  ...rest,
});
