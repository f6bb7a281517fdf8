import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('what somebody else says', () => {
  it.each<Told>([
    ['My husband says it is from 1988.', []],
    ['According to the stamp it was made in 1988.', ['made 1988-1988']],
    ['I was told it was made in 1988.', []],
    ['I am told nothing. It was made in 1988.', ['made 1988-1988']],
    ['Laut meiner Tante ist die Tasche von 1988.', []],
    ['Laut Etikett ist die Tasche von 1988.', ['made 1988-1988']],
    ['義母によると1988年製です。', []],
    ['1988年製です。', ['made 1988-1988']],
    ['My mum always said the bag was made in 1983, but she said that of everything.', []],
    ['I used to think it was made in 1983.', []],
  ])('%s', (text, claims, title) => expect(told(['made'], text, title)).toEqual(claims));
});
