import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

const conditions = (text: string) => claimsOf(text, null).filter((claim) => claim.startsWith('condition '));

describe('hardly used', () => {
  it.each([
    'Hardly ever used.',
    'Barely used.',
    'Fast nie getragen.',
    'Kaum benutzt.',
    'Presque jamais portée.',
    'Portée deux fois.',
    'Usata pochissimo.',
    'Praticamente mai usata.',
    'Apenas usado.',
    'Casi sin usar.',
    'Nauwelijks gebruikt.',
    'Vrijwel ongebruikt.',
    'ほとんど使っていません。',
  ])('is like new at most: %s', (text) => expect(conditions(text)).toEqual(['condition as-new']));
});

describe('"not used" of how much or since when', () => {
  it.each([
    'Not used much.',
    'Never worn more than twice.',
    'Unused for years.',
    'Jamais portée plus de deux fois.',
    'Non usata molto.',
    'Non usata da anni.',
    'No usado mucho.',
    'Lleva años sin usar.',
    'Al jaren niet gebruikt.',
    'Seit Jahren nicht benutzt.',
    '数回しか使っていません。',
    'あまり使用していません。',
    '最近使っていません。',
    'Never used in the rain.',
  ])('does not call it unused: %s', (text) => expect(conditions(text)).toEqual([]));

  it.each([
    'Never used in years.',
    'Unused, with tags. Light scratches do not show much.',
    'Nie benutzt, lange Henkel.',
    'Jamais portée depuis des années.',
    'Mai usata.',
    'Sin usar.',
    'Nooit gebruikt.',
    '一度も使っていません。',
  ])('still does where it is said of the whole time: %s', (text) =>
    expect(conditions(text)).toContain('condition unused'),
  );
});

describe('what is new at the end of a sentence', () => {
  it.each([
    'The dust bag is new, never used.',
    'Riem nieuw, nooit gebruikt, cadeau erbij.',
    'Le pochon est neuf, jamais utilisé.',
    'La correa es nueva, sin usar.',
    'Sie hat sie 1996 in Brüssel gekauft, neu.',
    "L'ho comprata nel 2005, nuova.",
  ])('is the thing ahead, or how it was when it was bought: %s', (text) => expect(conditions(text)).toEqual([]));
  it.each([
    ['Bag is new, never used.', ['condition new', 'condition unused']],
    ['New, never used.', ['condition new', 'condition unused']],
    ['Nuova con cartellino, mai indossata', ['condition new', 'condition unused']],
    ['Brass zip, navy lining, never used.', ['condition unused']],
  ])('is the piece otherwise: %s', (text, said) => expect(conditions(text)).toEqual(said));
});
