import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('what only looks so was not made then', () => {
  it.each<Told>([
    ['90s style, very comfortable.', []],
    ['The style goes back to 1908.', []],
    ['Vintage style, sixties.', []],
    ['Vintage, sixties.', ['made 1960-1969']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought'], text, title)).toEqual(claims));
});
