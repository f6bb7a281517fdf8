import type { Doubt } from '../types';
import { tellingFinder } from '../words';

const finder = tellingFinder('withdrawn', 'disputed');

/** Whether words take a statement back or dispute it. */
export const doubtedBy = (text: string): Doubt[] => [...new Set(finder(text).map(({ value }) => value))];
