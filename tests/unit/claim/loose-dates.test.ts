import { describe, expect, it } from 'vitest';
import { told } from './listing-of';

const kinds = (short: string, text: string) => told([short], text);

describe('a year by itself', () => {
  it('is of the piece, unless a date that is surely the piece’s does not go with it', () => {
    expect(kinds('made', 'Satchel 1991, brown.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. It was made in 1991.')).toEqual(['made 1991-1991', 'made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. It was made in 1985.')).toEqual(['made 1985-1985']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1991.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1997.')).toEqual(['made 1991-1991']);
    expect(kinds('made', 'Satchel 1991, brown. I bought it in 1985.')).toEqual([]);
  });

  it('in another order as well', () => {
    expect(kinds('made', 'I bought it in 1985. Satchel 1991, brown.')).toEqual([]);
  });
});
