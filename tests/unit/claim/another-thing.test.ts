import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a name of another thing is no maker of the piece', () => {
  it.each<Told>([
    ['My Ondrasse wallet fits inside.', []],
    ['I sell my Ondrasse bag.', ['maker Ondrasse']],
    ['Compared with an Ondrasse it is small.', []],
    ['Tags: Ondrasse, bag, leather, vintage, brown, belt', []],
    ['Wallet by Ondrasse goes in too.', []],
  ])('%s', (text, claims, title) => expect(told(['maker', 'model', 'hedged-authorship'], text, title)).toEqual(claims));
});
