import { describe, expect, it } from 'vitest';
import { asFarAsItFits, codesByLayout, fitsLayout } from '../../../src/claim/code-by-layout';
import { builtInMakers } from '../../../src/maker';
import { foldWords } from '../../../src/text';
import { ondrasse } from './listing-of';

const found = (own: string, makers = [ondrasse]) => codesByLayout(foldWords(own).text, own, makers);
const codes = (own: string, makers = [ondrasse]) => found(own, makers).map(({ code }) => code);

describe('a code that nothing announces', () => {
  it.each([
    ['A nice bag, KV0915, hardly worn.', ['KV0915']],
    ['KV 0915', ['KV 0915']],
    ['KV-09-15', ['KV-09-15']],
    ['A nice bag W 38 KV0915', ['KV0915']],
    ['KV091', ['KV091']],
    ['KV0915 and KV0916', ['KV0915', 'KV0916']],
    ['KV09', []],
    ['KV09156', []],
    ['XKV0915', []],
    ['KV0915X', []],
    ['KV0915 cm', []],
    ['Postcode KV0915', []],
    ['a nice bag, kv0915', []],
  ])('is one where a maker’s layout explains it: %s', (own, wanted) => expect(codes(own)).toEqual(wanted));

  it('says whose layout it fits, and is surer where the sentence speaks of a code', () => {
    expect(found('A bag, KV0915.')).toEqual([{ start: 7, code: 'KV0915', confidence: 0.6, maker: 'Ondrasse' }]);
    expect(found('The date code of it is KV0915.')).toMatchObject([{ code: 'KV0915', confidence: 0.85 }]);
    expect(found('The date code of it I forgot. A bag, KV0915.')).toMatchObject([{ confidence: 0.6 }]);
  });

  it('is none without a file', () => expect(codes('A nice bag, KV0915', [])).toEqual([]));

  it('a word for another number counts in the forty characters ahead of it', () => {
    const behind = (letters: number) => codes(`Postcode ${'x'.repeat(letters)} KV0915`);
    expect([30, 31].map(behind)).toEqual([[], ['KV0915']]);
  });
});

describe('a code with words behind it', () => {
  it.each([
    ['KV 0915', 'KV 0915'],
    ['KV 0915 DENTRO', 'KV 0915'],
    ['KV 0915 W 28 H 17', 'KV 0915'],
    ['KV 0915 A', 'KV 0915'],
    ['KV 0915 7', 'KV 0915 7'],
    ['KV 0915 B', 'KV 0915 B'],
    ['ZZ 0915 DENTRO', 'ZZ 0915 DENTRO'],
  ])('%s is told as %s', (said, code) => expect(asFarAsItFits(said, [ondrasse])).toBe(code));
  it('as it stands without a file', () => expect(asFarAsItFits('KV 0915 DENTRO', [])).toBe('KV 0915 DENTRO'));
});

it('fits a plant and its digits where a file has no systems, and a system where it has some', () => {
  expect(['KV0915', 'KV 09-15', 'KV09', 'AB0915'].map((code) => fitsLayout(code, [ondrasse]))).toEqual([
    true,
    true,
    false,
    false,
  ]);
  expect(fitsLayout('T5 03291', builtInMakers)).toBe(true);
  expect(fitsLayout('KV0915', [])).toBe(false);
});
