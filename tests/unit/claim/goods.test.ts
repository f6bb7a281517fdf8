import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a date of what comes with the piece', () => {
  it.each<Told>([
    ['A longer strap (from a 2020 bag).', []],
    ['Sold with a wallet of 2012.', []],
    ['Sold with its strap, made in 2012.', ['made 2012-2012']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});

describe('and its place of making', () => {
  it.each<Told>([['With a wallet, made in Spain.', []]])('%s', (text, claims, title) =>
    expect(told(['origin'], text, title)).toEqual(claims),
  );
});
