import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('years of the model are none of the piece', () => {
  it.each<Told>([
    ['The model was built from 1985 to 2012.', []],
    ['The model is of 1975, mine is younger.', []],
    ['The model is of 1975.', ['made 1975-1975']],
    ['The original run ended in 1984.', []],
    ['A re-issue of the basket of the 1970s.', []],
    ['A basket bag of the 1970s.', ['made 1970-1979']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});
