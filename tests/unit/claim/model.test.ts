import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a model of the piece, and of another', () => {
  it.each<Told>([
    ['Next to a Carryall 30 it looks small.', []],
    ['It looks like a Carryall 30.', ['model? Carryall 30']],
    ['Carryall 30, I think.', ['model? Carryall 30']],
    ['Carryall 30 (I think).', ['model? Carryall 30']],
    ['One of my Carryall 30s.', ['model Carryall 30']],
    ['No Carryall 30.', []],
  ])('%s', (text, claims, title) => expect(told(['maker', 'model', 'hedged-authorship'], text, title)).toEqual(claims));
});
