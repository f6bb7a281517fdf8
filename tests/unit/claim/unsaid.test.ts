import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('what is denied or asked is not said', () => {
  it.each<Told>([
    ['Not an Ondrasse.', []],
    ['Is it an Ondrasse?', []],
    ['Not made in Spain in 1994.', []],
    ['Made in Spain in 1994?', []],
    ['My sister’s was made in Spain in 1994.', []],
    ['Made in Spain in 1994.', ['origin ES', 'made 1994-1994']],
  ])('%s', (text, claims, title) => expect(told(['maker', 'origin', 'made'], text, title)).toEqual(claims));
});
