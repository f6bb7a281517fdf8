import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { sellersAnswers } from '../../../src/text';
import { claimsOf, listingOf, ondrasse } from './listing-of';

const makersOf = (title: string, text: string, language = 'en') =>
  findClaims(listingOf(title, text, language), [ondrasse]).flatMap((claim) =>
    claim.kind === 'maker' ? [claim.maker] : [],
  );

describe('makers that no file knows', () => {
  it.each<[string, string, string, string]>([
    ['de', 'Alte Tasche', 'Aktentasche der Fa. Morrhagen, Leder.', 'Morrhagen'],
    ['it', 'Borsa antica', 'Borsa in cuoio, ditta Zanfabri di Lucca.', 'Zanfabri'],
    ['nl', 'Oude tas', 'Leren tas van firma Ruwerda.', 'Ruwerda'],
    ['en', 'Satchel by Penwarrow & Locke', 'Brown leather.', 'Penwarrow & Locke'],
    ['es', 'Bandolera Halvard Finch', 'Piel.', 'Halvard Finch'],
  ])('%s: %s', (language, title, text, wanted) => {
    expect(makersOf(title, text, language)).toEqual([wanted]);
  });

  it.each<[string, string, string]>([
    ['de', 'Alte Tasche', 'Ich arbeite bei der Firma Morrhagen.'],
    ['de', 'Tasche', 'Keine Marke, kein Etikett.'],
    ['en', 'Brown leather bag', 'Sent by Royal Carrier within two days.'],
  ])('%s: none in %s: %s', (language, title, text) => {
    expect(makersOf(title, text, language)).toEqual([]);
  });
});

describe('a bag that is called by its strap', () => {
  it('is no strap where its title calls it so', () => {
    expect(claimsOf('Bandolera de piel negra.', 'es', 'Bandolera negra')).not.toContain('strap = black leather');
    expect(claimsOf('Tracolla in pelle rossa.', 'it', 'Tracolla rossa')).not.toContain('strap = red leather');
  });
  it('is one beside a bag', () => {
    expect(claimsOf('Bolso con bandolera de piel negra.', 'es', 'Bolso')).toContain('strap = black leather');
  });
});

describe('answers told by their turns', () => {
  const answersIn = (text: string) =>
    sellersAnswers(text)
      .split('\n')
      .map((line) => line.trim())
      .filter(Boolean);
  it('stand right below a question', () => {
    expect(answersIn('Preguntas\n¿Qué número lleva?\nPone AB1234\nYo tengo otro de 1980')).toEqual([
      '¿Qué número lleva?',
      'Pone AB1234',
    ]);
  });
  it('are not looked for among comments', () => {
    expect(answersIn('Kommentare\nWelche Nummer?\nBei mir AB1234')).toEqual([]);
  });
});
