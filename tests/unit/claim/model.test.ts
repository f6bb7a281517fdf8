import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf, ondrasse, type Told, told } from './listing-of';

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

it('a model is surer where its maker is stated', () => {
  const confidence = (title: string) =>
    findClaims(listingOf(title, 'A Carryall 30.'), [ondrasse]).flatMap((one) =>
      one.kind === 'model' ? [one.confidence] : [],
    );
  expect([confidence('Ondrasse bag'), confidence('Brown bag')]).toEqual([[0.9], [0.6]]);
});
