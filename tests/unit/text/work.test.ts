import { describe, expect, it } from 'vitest';
import { countWork } from '../../growth/count-work';
import { fillings } from '../../growth/fillings';
import { textReaders } from '../../growth/text-readers';

/** Fillings that the readers find much in, so that comparing each find with all others would show. */
const dense = [
  'prose',
  'Japanese prose',
  'phrases',
  'bare conditions',
  'condition words',
  'terms words',
  'marks words',
  'label words',
  'stars',
  'prices',
  'sizes',
  'percent signs',
  'days and months',
  'decades',
  'data pairs',
  'image addresses',
  'addresses',
  'closed tags',
  'references',
  'bars in blanks',
  'digits apart',
  'digits and stars',
  'letters and halves',
  'newlines',
  'blanks between words',
] as const;
const [small, factor] = [1_000, 8];
/** Eight times the text counts eight times the work when it is linear, and 64 times when it is the square. */
const allowed = factor * 1.5;

const growthOf = (read: (text: string) => unknown, make: (length: number) => string, size: number): number => {
  // What is built at the first question is not counted.
  read(make(small));
  const [before, after] = [make(size), make(size * factor)].map((text) => countWork(() => read(text)));
  return (after as number) / Math.max(before as number, size);
};

describe('work counted, not timed', () => {
  it('tells the square from the line', () => {
    const pairs = (text: string) => [...text].map((one) => [...text].some((other) => other === `${one}!`));
    const growth = (read: (text: string) => unknown) =>
      countWork(() => read('a'.repeat(800))) / countWork(() => read('a'.repeat(100)));
    expect(growth(pairs)).toBeGreaterThan(allowed);
    expect(growth((text) => text.replace(/a/g, 'b').split('').map(String))).toBeLessThan(allowed);
  });

  for (const [name, read] of Object.entries(textReaders))
    it(`${name} grows with the text`, () => {
      const growth = dense.map((filling) => ({
        filling,
        times: growthOf(read, fillings[filling] as (length: number) => string, small),
      }));
      expect(growth.filter(({ times }) => times >= allowed)).toEqual([]);
    }, 60_000);

  it('findConditions does so on a long text, whose words cost so much that finds show late', () => {
    const { findConditions } = textReaders;
    const make = fillings['bare conditions'] as (length: number) => string;
    expect(growthOf(findConditions as (text: string) => unknown, make, small * factor)).toBeLessThan(allowed);
  }, 60_000);
});
