import type { ChangedSubject } from '../../check';

/** What a listing says of its piece, as a sentence names it. */
export const subjects: Record<ChangedSubject, string> = {
  made: 'the date of making',
  origin: 'the country of making',
  condition: 'the condition',
  code: 'the code',
  model: 'the model',
  maker: 'the maker',
};
