import { descriptionGiven } from '../../../src/check/description-given';
import { testRule } from '../../rule-tester';
import { facts, stated, withPhotos } from './sample';

const text = (words: string) => facts({ listing: withPhotos(1, { description: words ? stated(words) : [] }) });
const told = {
  kind: 'gap' as const,
  basis: ['What the listing says in writing is what a piece can be held against when it comes.'],
  asks: ['description'],
};

testRule(descriptionGiven, {
  speaks: {
    'without a description': [text(''), { ...told, data: { characters: 0 }, says: 'The listing has no description.' }],
    'on two words, blanks around them not counted': [
      text('  Nice bag   '),
      { ...told, data: { characters: 8 }, says: 'The listing describes the piece in 8 characters.' },
    ],
  },
  silent: { 'on a sentence or two': text('Brown leather bag of 1994, 30 cm wide, small scratch on the base.') },
  limits: {
    shortest: {
      is: 40,
      step: 1,
      given: (length) => text('a'.repeat(length)),
      under: 'gap',
      at: 'silent',
      over: 'silent',
    },
  },
});
