import { isAboutAnother, isLeftOpen, isNegated } from '../text';

/** Whether words state nothing of the piece: denied, asked or supposed ("was it made in Spain? No"), or said of another. */
export const isUnsaid = (text: string, start: number, end: number): boolean =>
  isNegated(text, start, end) || isLeftOpen(text, start, end) || isAboutAnother(text, start, end);
