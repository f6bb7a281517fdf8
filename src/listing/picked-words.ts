import { attributeText } from './page/dom';

/** The words that an element gives where it shows none: its label, its content, its value. */
export const wordsInAttributes = (element: Element): string =>
  ['aria-label', 'content', 'value', 'alt'].map((name) => attributeText(element, name)).find((words) => words !== '') ??
  '';
