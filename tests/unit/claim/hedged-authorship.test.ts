import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a hedged name, and a look that is nobody’s', () => {
  it.each<Told>([
    ['Like an Ondrasse.', ['hedged-authorship']],
    ['Ondrasse style.', ['hedged-authorship']],
    ['Inspired by the bags of doctors.', []],
    ['Inspired by Ondrasse.', ['hedged-authorship']],
    ['The zip is not original.', []],
  ])('%s', (text, claims, title) => expect(told(['maker', 'model', 'hedged-authorship'], text, title)).toEqual(claims));
});
