import type { NearCode, ReadingSaid, ShownCode } from '../../check';
import { type Difference, differenceWords } from '../../code';
import type { Kit } from '../kit';
import { systemName } from '../system-name';

/** "the stamp in photo 3 reads KV0915" */
export function codeShown({ from, photo, code }: ShownCode, kit: Kit): string {
  if (from === 'photo') return `the stamp in ${kit.photo(photo)} reads ${kit.code(code)}`;
  return from === 'typed' ? `the typed code is ${kit.code(code)}` : `the listing quotes the code ${kit.code(code)}`;
}

/** "January 1995, Belgium" */
export const readingSaid = ({ span, places }: ReadingSaid, kit: Kit): string =>
  [span ? kit.span(span) : 'no date', ...places.map(kit.place)].join(', ');

/** "January 1995, Belgium, or week 1 of 1995, Belgium" */
export const readingsSaid = (readings: readonly ReadingSaid[], kit: Kit): string =>
  [...new Set(readings.map((one) => readingSaid(one, kit)))].join(', or ');

/** ' ("8" in place 2 read as "B", which look alike)' */
export const differencesSaid = (differences: readonly Difference[]): string =>
  differences.length === 0 ? '' : ` (${differences.map(differenceWords).join('; ')})`;

/** The nearest code in a sentence of its own; the same text is one whose only reading lies out of its system's time. */
export function nearest({ code, differences, system, used, says }: NearCode, kit: Kit): string {
  if (differences !== null) return `The nearest code that does is ${code}${differencesSaid(differences)}.`;
  return `By the system ${kit.quote(systemName(system))} (${kit.span(used)}) it would read ${readingSaid(says, kit)}, which is not certain enough.`;
}
