import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

describe('what is told of a part that was replaced', () => {
  it.each([
    ['en', 'Strap replaced in 2014, the original had snapped.', 'strap'],
    ['fr', "Poignée changée car l'ancienne était cassée.", 'handle'],
    ['de', 'Der Henkel wurde 2014 erneuert, das Original war gerissen.', 'handle'],
    ['it', "Cerniera sostituita nel 2014, l'originale era rotta.", 'zip'],
    ['es', 'Asa cambiada en 2014, la original estaba rota.', 'handle'],
    ['nl', 'Hengsel vervangen in 2014, het origineel was gescheurd.', 'handle'],
    ['ja', '持ち手は2014年に交換しました。元のものは破れていました。', 'handle'],
    ['en', 'The lining was redone because it was stained and torn.', 'lining'],
  ])('%s: %s', (language, sentence, part) => {
    expect(claimsOf(sentence, language)).toEqual([`replaced ${part}`]);
  });

  it('and not of the piece, which may be the original', () => {
    expect(claimsOf('The original, not the remake. Handles torn, well worn.', 'en')).toContain('condition worn');
  });
});

describe('a repair behind wear of another part', () => {
  it.each([
    ['en', 'Stains on the lining and the strap was replaced.', ['replaced strap', 'wear']],
    ['de', 'Flecken im Futter und der Riemen wurde ersetzt.', ['replaced strap', 'wear']],
    ['it', 'Macchie sulla fodera e la tracolla è stata sostituita.', ['replaced strap', 'wear']],
    ['en', 'The lining and the strap were replaced.', ['replaced lining+strap']],
  ])('%s: %s', (language, sentence, said) => {
    expect(claimsOf(sentence, language).toSorted()).toEqual(said);
  });
});

describe('a part that the clause before names', () => {
  it.each([
    ['en', 'Zip gave up, replaced in 2020.', ['replaced zip']],
    ['ja', '肩紐は傷んだので、職人に頼んで新しいものに交換しました。', ['replaced strap']],
    ['en', 'I had a new strap made in 2016.', ['replaced strap']],
  ])('%s: %s', (language, sentence, said) => {
    expect(claimsOf(sentence, language)).toEqual(said);
  });
});

it('takes leather that a clause is of for no material of the part beside it', () => {
  expect(claimsOf('An der Unterseite ist das Leder dunkel.', 'de').filter((one) => /^base/.test(one))).toEqual([]);
  expect(claimsOf('Garnitures en laiton.', 'fr')).toEqual(['hardware = brass']);
  expect(claimsOf('Forro de algodón estampado.', 'es')).toEqual(['lining = cotton']);
});
