import { ofData } from '../../data-term';
import type { WordsFor } from '../../finding-words';
import { datedSaid } from '../dates';
import { saying } from '../saying';

type Text =
  | 'age-word-fits'
  | 'description-given'
  | 'authorship-plain'
  | 'maker-stated'
  | 'grade-words'
  | 'ready-made-assurance'
  | 'remade-by-another'
  | 'not-vouched'
  | 'packaging-only'
  | 'condition-words-agree';

export const text: WordsFor<Text> = {
  'age-word-fits': {
    title: '“Vintage” or “antique” fits the date',
    failureTitle: '“Vintage” or “antique” does not fit the date',
    rule: 'A piece is called vintage from about 20 years on, and antique from about 100.',
    statement: ({ words, least, dated }, kit) =>
      `The listing says ${kit.quote(words)}, which is at least ${least} years old, but ${datedSaid(dated, kit)}.`,
    innocent: 'Many sellers use “vintage” for anything that is not new.',
    settles: 'When it was made, and how that is known.',
  },
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
  'grade-words': {
    title: 'No trade word for a copy stands in the text',
    failureTitle: 'The text holds a trade word for the grade of a copy',
    rule: 'Words such as “mirror quality” or “1:1” are how the trade grades copies.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The word may belong to another thing (a mirror, a scale), or be denied in the same sentence.',
    settles: 'What the seller means by it, in writing.',
  },
  'ready-made-assurance': {
    title: 'No ready-made assurance stands in for facts',
    failureTitle: 'A ready-made assurance stands in for facts',
    rule: 'An assurance without a fact that can be checked settles nothing.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Many sellers write it because buyers and marketplaces ask for it.',
    settles: 'What the assurance rests on: a receipt, the code, a qualified opinion.',
  },
  'remade-by-another': {
    title: 'The piece is as its maker made it',
    failureTitle: 'The piece is said to be remade from an older one',
    rule: 'What is remade from an older piece keeps that one’s stamp and materials, and is no longer its maker’s work.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Such pieces are sold openly, and the seller says so here.',
    settles: 'Who remade it and from what; a stamp on it then dates the older piece.',
  },
  'not-vouched': {
    title: 'The seller says who made the piece',
    failureTitle: 'The seller does not vouch for who made the piece',
    rule: 'What a seller does not vouch for, the buyer cannot hold them to.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'Many private sellers cannot know, and say so honestly.',
    settles: 'How it came to the seller, a receipt, a qualified opinion.',
  },
  'packaging-only': {
    title: 'The piece itself is on sale',
    failureTitle: 'Only packaging seems to be on sale',
    rule: 'Boxes and pouches are sold by themselves, under the name of the piece that came in them.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The seller says so openly; a title is easily read past.',
    settles: 'What exactly comes with the sale.',
  },
  'condition-words-agree': {
    title: 'The words for the condition agree',
    failureTitle: 'The piece is called new or unused, and worn',
    rule: 'What is new or unused shows no wear.',
    statement: ({ said, against }, kit) =>
      ofData(said)
        ? `${saying(said, kit)}, and the listing says ${kit.quote(against)}.`
        : `${saying(said, kit)} and also ${kit.quote(against)}.`,
    innocent: '“New” may be the field that the marketplace filled in, or the marks come from storage.',
    settles: 'Every sign of use, with a photo.',
  },
};
