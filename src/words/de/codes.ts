import type { NearCode, ReadingSaid, ShownCode } from '../../check';
import type { Kit } from '../kit';

/** "der Stempel in Foto 3 lautet KV0915" */
export function codeShown({ from, photo, code }: ShownCode, kit: Kit): string {
  if (from === 'photo') return `der Stempel in ${kit.photo(photo)} lautet ${kit.code(code)}`;
  return from === 'typed'
    ? `der eingegebene Code ist ${kit.code(code)}`
    : `das Angebot zitiert den Code ${kit.code(code)}`;
}

/** "Januar 1995, Belgien" */
export const readingSaid = ({ span, places }: ReadingSaid, kit: Kit): string =>
  [span ? kit.span(span) : 'ohne Zeit', ...places.map(kit.place)].join(', ');

/** All readings in one phrase. */
export const readingsSaid = (readings: readonly ReadingSaid[], kit: Kit): string =>
  [...new Set(readings.map((one) => readingSaid(one, kit)))].join(', oder ');

/** The nearest code in a sentence of its own; the same text is one whose only reading lies out of its system's time. */
export function nearest({ code, change, system, used, says }: NearCode, kit: Kit): string {
  // What differs is told in English alone; the code itself shows it.
  if (change !== null) return `Der nächste passende Code ist ${code}.`;
  return `Nach dem Aufbau ${system} (${kit.span(used)}) hieße er ${readingSaid(says, kit)}, aber nicht sicher genug.`;
}
