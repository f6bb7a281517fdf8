import { describe, expect, it } from 'vitest';
import { boundsOf, yearsIn } from '../../../src/take/said/year-words';
import { foldWords } from '../../../src/text';

/** The years that a text names, each with what it is of the text. */
const told = (text: string) => {
  const folded = foldWords(text);
  return yearsIn(folded.text).map((token) => [folded.text.slice(token.start, token.end), ...boundsOf(token)]);
};

describe('a decade in a text on a maker', () => {
  it.each([
    ['Made through the forties', 'forties', 1940, 1949],
    ['les boutons des années quatre vingt dix', 'annees quatre vingt dix', 1990, 1999],
    ['bis in die Fuenfziger hinein', 'fuenfziger', 1950, 1959],
    ['i manici degli anni cinquanta', 'anni cinquanta', 1950, 1959],
    ['Hasta los ochenta se cosían a mano', 'los ochenta', 1980, 1989],
    ['sloten uit de jaren twintig', 'jaren twintig', 1920, 1929],
    ['ab den 60er-Jahren', '60er-jahren', 1960, 1969],
  ])('is one in each language, in words or figures: %s', (text, words, from, to) => {
    expect(told(text)).toEqual([[words, from, to]]);
  });

  it.each(['thirty bags a week', 'soixante ouvriers', 'Sie war vierzig', 'un taller de treinta años'])(
    'is none where something is counted: %s',
    (text) => {
      expect(told(text)).toEqual([]);
    },
  );
});
