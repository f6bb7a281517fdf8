import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a verb of making is of the piece, or of its photos', () => {
  it.each<Told>([
    ['The bag was created in 1987.', ['made 1987-1987']],
    ['It was created in 1987.', ['made 1987-1987']],
    ['Elle a été faite en 1987.', ['made 1987-1987']],
    ['Er wurde 1987 gemacht.', ['made 1987-1987']],
    ['The photos were created in 1987.', []],
    ['Sie wurde 1987 gemacht.', ['made 1987-1987']],
    ['Die Fotos wurden 1987 gemacht.', []],
    ['Se hizo en 1987.', ['made 1987-1987']],
    ['La foto se hizo en 1987.', []],
    ['Faite en 1978.', ['made 1978-1978']],
    ['Réparation faite en 1978.', []],
    ['De tas werd in 1987 met de hand genaaid.', ['made 1987-1987']],
    ['De foto’s werden in 1987 met de hand genaaid.', []],
    ['The Ledger was stitched in 1987.', ['made 1987-1987'], 'Velmont Ledger'],
    ['The Ledger was stitched in 1987.', [], 'Velmont Roost'],
  ])('%s', (text, claims, title) => expect(told(['made'], text, title)).toEqual(claims));
});
