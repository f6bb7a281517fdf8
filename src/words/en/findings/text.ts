import type { WordsFor } from '../../finding-words';

export const text: WordsFor<'description-given'> = {
  'description-given': {
    title: 'The listing describes the piece',
    failureTitle: 'The listing hardly describes the piece',
    rule: 'What the listing says in writing is what a piece can be held against when it comes.',
    statement: ({ characters }) =>
      characters === 0
        ? 'The listing has no description.'
        : `The listing describes the piece in ${characters} characters.`,
    innocent: 'The seller may let the photos speak.',
    settles: 'Maker, age, material, size and condition in writing.',
  },
};
