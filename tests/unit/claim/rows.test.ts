import { expect, it } from 'vitest';
import { passage } from '../../../src/claim/passage';
import { rowsOf } from '../../../src/claim/rows';

const rows = (...lines: string[]) => rowsOf(passage('text', lines.join('\n'), 'en', '')).map(({ text }) => text);

it('a label and its value, in one line or in two, however they are indented', () => {
  expect(rows('Lining: red suede')).toEqual(['Lining: red suede']);
  expect(rows('  Lining:   red suede  ')).toEqual(['Lining: red suede']);
  expect(rows('   Lining  ', '\tred suede ')).toEqual(['Lining: red suede']);
  expect(rows('Lining :', '', 'red suede')).toEqual(['Lining: red suede']);
  expect(rows('Material', 'calf')).toEqual(['Material: calf']);
});

it('a label behind which another one stands has no value', () => {
  expect(rows('Lining', 'Material', 'calf')).toEqual(['Material: calf']);
  expect(rows('Lining', 'Material: calf')).toEqual(['Material: calf']);
  expect(rows('Lining')).toEqual([]);
});

it('what is of the sale, and what a filter counts, is no row of the piece', () => {
  expect(rows('Postage: 4 pounds', 'Colour: tan', 'Material: Leather (120)')).toEqual([]);
  expect(rows('Material', 'Leather (120)')).toEqual([]);
  expect(rows('Material: Leather (calf)')).toEqual(['Material: Leather (calf)']);
});

it('a label is no longer than forty characters, and a page has no more than a hundred rows', () => {
  const label = (length: number) => `Lining ${'x'.repeat(length - 7)}`;
  expect(rows(`${label(40)}: suede`)).toEqual([`${label(40)}: suede`]);
  expect(rows(`${label(41)}: suede`)).toEqual([]);
  const many = Array.from({ length: 101 }, (_, at) => `Lining: suede ${at}`);
  expect(rows(...many)).toEqual(many.slice(0, 100));
});
