import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

const dated = (words: string, title = '') =>
  claimsOf(words, null, title).filter((claim) => /^(?:made|bought) /.test(claim));

/* Each pair differs in one word: what the date is said of. */
describe('a date of the piece, and the same date of something else', () => {
  it.each<[string, string, string]>([
    ['made 1990-1994', 'The bag was made from 1990 to 1994.', 'This model was made from 1990 to 1994.'],
    ['made 1990-1994', 'The bag was made between 1990 and 1994.', 'This type was made between 1990 and 1994.'],
    ['made 1970-1979', 'A bag of the 1970s. A re-issue exists.', 'A re-issue of the bag of the 1970s.'],
    ['made 1994-1994', 'My bag, of 1994.', 'Another bag, of 1994.'],
    ['made 1994-1994', 'The bag, made in 1994.', 'The matching bag, made in 1994.'],
    ['made 1990-1999', 'A bag of the 1990s.', 'A bag since the 1990s.'],
    ['made 1994-1994', 'A bag, made about 1994.', 'A bag, made since about 1994.'],
    ['made 1994-1994', 'The bag was made in 1994.', 'The bag was made two years ago.'],
    ['made 1994-1994', 'With a strap, from 1994, a bag', 'With a strap (from a 1994 bag)'],
    ['made 1994-1994', 'The bag was made in May 1994.', 'The bag was made in May.'],
  ])('%s: “%s” and not “%s”', (claim, own, other) => {
    expect(dated(own)).toEqual([claim]);
    expect(dated(other)).toEqual([]);
  });

  it('of a title opens the offer, or goes on with another piece', () => {
    expect(dated('', 'Ondrasse bag, 1994')).toEqual(['made 1994-1994']);
    expect(dated('', 'Ondrasse bag, of 1994')).toEqual(['made 1994-1994']);
    expect(dated('', 'The matching bag, of 1994')).toEqual([]);
  });
});
