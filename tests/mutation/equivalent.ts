import { readFileSync } from 'node:fs';
import type { Mutant } from './draw';
import equivalents from './equivalents.json';

/** A change that no test can notice, and why. `line` is the trimmed line as it stands, `column` where in it `was` begins. */
interface Equivalent {
  path: string;
  line: string;
  column: number;
  was: string;
  text: string;
  because: string;
}
const all: Equivalent[] = equivalents;

export const argued = ({ path, stands, column, was, text }: Mutant): boolean =>
  all.some(
    (one) => one.path === path && one.line === stands && one.column === column && one.was === was && one.text === text,
  );

/** Arguments about lines that the program no longer has. */
export const staleArguments = (): string[] =>
  all.filter(({ path, line }) => !linesOf(path).includes(line)).map(({ path, line }) => `${path}: ${line}`);

function linesOf(path: string): string[] {
  try {
    return readFileSync(path, 'utf8')
      .split('\n')
      .map((line) => line.trim());
  } catch {
    return [];
  }
}
