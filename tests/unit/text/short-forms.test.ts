import { describe, expect, it } from 'vitest';
import { foldWords, sourceRange, writtenOut } from '../../../src/text';
import { claimsOf } from '../claim/listing-of';

const read = (text: string, language: string | null) => writtenOut(foldWords(text), language);

describe('short forms of a language', () => {
  it.each([
    ['it', 'Acq. nel 2003, fod. camoscio', 'acquistata nel 2003, fodera camoscio'],
    ['it', 'Fodera cam. Zip ok', 'fodera camoscio. zip ok'],
    ['de', 'Gek. 2003, Beschl. Messing', 'gekauft 2003, beschlage messing'],
    ['fr', 'qq taches ds la poche', 'quelques taches dans la poche'],
    ['en', 'bght 2003, hw brass', 'bought 2003, hardware brass'],
    ['nl', 'Voer. katoen, riem verv.', 'voering katoen, riem vervangen'],
    ['es', 'Crem. nueva, alg.', 'cremallera nueva, algodon'],
    ['en', 'int. of the bag, print.', 'interior of the bag, print.'],
    ['ja', 'int. cam.', 'int. cam.'],
  ])('%s: %s', (language, text, written) => {
    expect(read(text, language).text).toBe(written);
  });

  it('are those of no other language, and no part of a word', () => {
    expect(read('gek. cam.', 'fr').text).toBe('gek. cam.');
    expect(read('avion, prs', 'fr').text).toBe('avion, prs');
    expect(read('gek.', null).text).toBe('gek.');
  });

  it('stand at their own place', () => {
    const folded = read('Borsa acq. nel 2003', 'it');
    const start = folded.text.indexOf('acquistata');
    expect(sourceRange(folded, start, start + 'acquistata'.length)).toEqual({ start: 6, end: 10, words: 'acq.' });
    const year = folded.text.indexOf('2003');
    expect(sourceRange(folded, year, year + 4).words).toBe('2003');
  });

  it('are claimed as what they stand for', () => {
    expect(claimsOf('Gek. 1998 in Gent, Innenf. Wildl.', 'de')).toEqual(['bought 1998-1998', 'lining = suede']);
    expect(claimsOf('Genaeht mit Koeper, gefuettert mit Koeper.', 'de')).toContain('lining = twill');
  });
});
