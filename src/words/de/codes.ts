import type { NearCode, ReadingSaid, ShownCode } from '../../check';
import type { Difference, Expected } from '../../code';
import type { Kit } from '../kit';
import { systemName } from '../system-name';

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

/** What tells a near code from the one that was read, in brackets. */
export function differencesSaid(differences: readonly Difference[], kit: Kit): string {
  const said = (one: Difference): string => {
    if (one.kind === 'as-written') return one.words;
    if (one.kind === 'left-out') return `${kit.quote(one.was)} an Stelle ${one.place} weggelassen`;
    if (one.kind === 'added') return `${kit.quote(one.is)} nach Stelle ${one.place} ergänzt`;
    const alike = one.alike ? ', sie sehen sich ähnlich' : '';
    return `${kit.quote(one.was)} an Stelle ${one.place} als ${kit.quote(one.is)} gelesen${alike}`;
  };
  return differences.length === 0 ? '' : ` (${differences.map(said).join('; ')})`;
}

/** What a value of a code has to be. */
export function expectedSaid(expected: Expected, kit: Kit): string {
  switch (expected.kind) {
    case 'range':
      return `${expected.first} bis ${expected.last}`;
    case 'one-of':
      return `eines der Zeichen ${expected.of}`;
    case 'any-year':
      return 'ein Jahr';
    case 'letters':
      return 'Buchstaben';
    case 'plant':
      return `eine Werkstatt der Datei: ${expected.codes}`;
    case 'in-year':
      return `ein Wert, den es im Jahr ${kit.either(expected.years.map(String))} gibt`;
    case 'in-table':
      return 'eine Nummer aus der Tabelle';
    case 'own-date':
      return `eine Nummer aus der Zeit des Codes; ${expected.number} entstand ${kit.either(expected.made.map((one) => kit.span(one)))}`;
    case 'check':
      return expected.fits ?? 'keines: ein Zeichen davor hat in dieser Regel keinen Wert';
    case 'as-written':
      return expected.words;
  }
}

/** The nearest code in a sentence of its own; the same text is one whose only reading lies out of its system's time. */
export function nearest({ code, differences, system, used, says }: NearCode, kit: Kit): string {
  if (differences !== null) return `Der nächste passende Code ist ${code}${differencesSaid(differences, kit)}.`;
  return `Nach dem Aufbau ${kit.quote(systemName(system))} (${kit.span(used)}) hieße er ${readingSaid(says, kit)}, aber nicht sicher genug.`;
}
