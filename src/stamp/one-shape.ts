import { bare } from './bare';

/** Characters with one shape in many faces. Common practice, no source: older stamps strike both with one tool. */
export const oneShape = [
  ['O', '0'],
  ['I', '1'],
] as const;

/** The letters and digits of a text, each with one shape for two written as the digit: equal where the shapes are. */
export const shapesOf = (text: string): string =>
  oneShape.reduce((shapes, [letter, digit]) => shapes.replaceAll(letter, digit), bare(text));
