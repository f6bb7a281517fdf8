import { describe, expect, it } from 'vitest';
import { told } from './listing-of';

const dates = (text: string) => told(['made', 'bought'], text);

describe('what a seller makes of a code', () => {
  it.each([
    'The stamp says M3-214/98, so it is a 1998.',
    'Le poinçon dit M3-214/98, donc une 1998.',
    'Dentro si legge M3-214/98, quindi una 1998.',
    'Op het label staat M3-214/98, dus een 1998.',
  ])('is a date of making: %s', (text) => expect(dates(text)).toEqual(['made 1998-1998']));
  it.each([
    'It is dear, so a 1998 fair would not have it.',
    'Ma sœur est née en hiver, donc une 1998 pas comme les autres.',
  ])('and nothing where the sentence goes on: %s', (text) => expect(dates(text)).toEqual([]));
});

describe('the year in which it was bought', () => {
  it.each([
    'She carried it from 1968, the year she bought it.',
    "Porté depuis 1968, l'année où elle l'a acheté.",
    'Getragen seit 1968, dem Jahr, in dem sie sie kaufte.',
    "Portata dal 1968, l'anno in cui la comprò.",
    'Lo llevaba desde 1968, el año en que lo compró.',
    'Gedragen sinds 1968, het jaar dat ze hem kocht.',
  ])('is told behind it: %s', (text) => expect(dates(text)).toEqual(['bought 1968-1968']));
  it('and is no other year', () => {
    expect(dates('She carried it from 1968, the year my sister was born.')).toEqual([]);
  });
});
