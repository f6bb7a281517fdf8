import type { WordsFor } from '../../finding-words';

type Text = 'description-given' | 'authorship-plain' | 'maker-stated';

export const text: WordsFor<Text> = {
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
  'authorship-plain': {
    title: 'The listing says plainly who made the piece',
    failureTitle: 'The listing hedges who made the piece',
    rule: '“Style of” or “inspired by” a maker says that another made it.',
    statement: ({ words }, kit) => `The listing hedges who made it: ${kit.quote(words)}.`,
    innocent: 'The seller may mean the cut or the period, or be careful by habit.',
    settles: 'Who made it, in writing.',
  },
  'maker-stated': {
    title: 'The listing names one maker',
    failureTitle: 'The listing names no maker, or several',
    rule: 'A piece has one maker, and a description that counts names it.',
    statement: ({ makers }, kit) =>
      makers.length === 0
        ? 'The listing names no maker.'
        : `The listing names several makers: ${kit.list(makers.map(kit.quote))}.`,
    innocent: 'Other makers may be named to be found, or for comparison.',
    settles: 'Who made it, in writing.',
  },
};
