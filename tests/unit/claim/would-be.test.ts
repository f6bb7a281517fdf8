import { describe, expect, it } from 'vitest';
import { claimsBeginning as heard } from './listing-of';

describe('what would be, or only seems, is not said of the piece', () => {
  it.each([
    ['en', 'If it came from an outlet I would say so.'],
    ['de', 'Falls aus dem Outlet, stünde es auf dem Etikett.'],
    ['fr', 'Si c’était un outlet, je le dirais.'],
    ['it', 'Se fosse di un outlet lo direi.'],
    ['es', 'Si fuera de outlet lo diría.'],
    ['nl', 'Als het uit een outlet kwam, stond dat erop.'],
    ['ja', 'アウトレットだったら書きます。'],
  ])('a channel in a condition (%s)', (language, words) => expect(heard('channel', words, language)).toEqual([]));
  it.each([
    ['en', 'Seems older, looks never used here but the base is scuffed.'],
    ['de', 'Wirkt auf dem Bild ungetragen, aber der Boden hat Kratzer.'],
    ['fr', 'Elle semble jamais portée, mais le fond est rayé.'],
    ['it', 'Sembra mai usata, ma il fondo è graffiato.'],
    ['es', 'Parece sin usar, pero el fondo tiene rayas.'],
  ])('a condition that is only seemingly so (%s)', (language, words) =>
    expect(heard('condition unused', words, language)).toEqual([]),
  );
  it('but a plain condition stands beside its “but”', () =>
    expect(heard('condition', 'Never used, but the corners are scuffed.', 'en')).toEqual(['condition unused']));
  it.each([
    ['en', 'My uncle always said it was bought in 1979, but he said that of all our things.'],
    ['de', 'Oma behauptet gekauft 1979, aber sie verwechselt viel.'],
  ])('a purchase by hearsay that the seller does not follow (%s)', (language, words) =>
    expect(heard('bought', words, language)).toEqual([]),
  );
  it('a purchase by hearsay that they do follow is about that year', () =>
    expect(heard('bought', 'I was told it was bought in 1979.', 'en')).toHaveLength(1));
});

describe('asked not to ask', () => {
  it.each([
    ['it', 'Non chiedete bonifici.'],
    ['es', 'No me pidáis una transferencia.'],
    ['nl', 'Vraag me niet om een overboeking.'],
    ['de', 'Fragt nicht nach Überweisung.'],
  ])('%s: %s', (language, words) => expect(heard('payment', words, language)).toEqual([]));
  it('a transfer instead of the site’s own way is asked for', () => {
    expect(heard('payment', 'Bank transfer instead of through the site.', 'en')).not.toEqual([]);
    expect(heard('payment', 'Bank transfer through the site.', 'en')).toEqual([]);
  });
});

describe('items of a list', () => {
  it.each([
    ['en', 'Green twill inside, brass, mustard thread'],
    ['de', 'Innen Köper, Messing, Griffe dunkel'],
    ['fr', 'Sergé olive. Laiton terni. Anses foncées.'],
    ['it', 'Twill, ottone un po’ opaco, manici scuri'],
    ['es', 'Sarga verde, latón, asas oscuras'],
    ['nl', 'Olijfgroene binnenkant, messing, kale hoekjes'],
  ])('brass by itself is that of the fittings (%s)', (language, words) =>
    expect(heard('hardware', words, language)).toEqual(['hardware = brass']),
  );
  it('brass of something named is not', () => expect(heard('hardware', 'Comes with a brass key', 'en')).toEqual([]));
  it('a year in brackets belongs to the gift ahead of it', () =>
    expect(heard('bought', 'Gekregen voor mijn examen (2003), altijd zuinig op geweest.', 'nl')).toEqual([
      'bought 2003-2003',
    ]));
});
