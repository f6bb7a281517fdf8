import { sure } from './sure';
import type { StampLine } from './types';

/** What stands in a photo beside a line, as far as it is surely read: its other lines, and ordinary print. */
export const textsBeside = (line: StampLine, lines: readonly StampLine[], printed: readonly string[]): string[] => [
  ...lines.filter(({ id, free }) => id !== line.id && free.probability >= sure).map(({ free }) => free.text),
  ...printed,
];
