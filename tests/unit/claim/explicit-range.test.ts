import { describe, expect, it } from 'vitest';
import { told } from './listing-of';

const kinds = (short: string, text: string) => told([short], text);

describe('years of a range', () => {
  it.each<[string, string[]]>([
    ['A bag made between 1990 and 2002.', ['made 1990-2002']],
    ['A bag made between 1990 and 2003.', []],
    ['A bag, 1990-2002.', ['made 1990-2002']],
    ['A bag, 1990-2003.', []],
    ['A bag, 1990-94.', ['made 1990-1994']],
  ])('%s', (text, made) => expect(kinds('made', text)).toEqual(made));
});
