import type { Observation } from '../photo';
import { kit, strings } from '../words';

/** A kind of observation that an older case kept, or a newer one, is called as it is written. */
export const nameOfSeen = (what: string): string =>
  (strings.observed.what as Readonly<Record<string, string | undefined>>)[what] ?? what;

/** What was seen or measured, with its unit and how far off it may be. */
export function valueWords({ value, uncertainty, unit }: Observation): string {
  const words = strings.observed;
  if (value === null) return words.notMeasured;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  if (typeof value === 'string') return value;
  const inUnit = unit === null ? (text: string) => text : words.units[unit];
  if (!uncertainty) return inUnit(kit.number(value, decimals(value, 3)));
  const fine = decimals(uncertainty, 2);
  return inUnit(words.within(kit.number(value, fine), kit.number(uncertainty, fine)));
}

/** Decimals that show so many digits of a number, at most four. */
const decimals = (value: number, digits: number): number =>
  Math.min(4, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value) || 1))));
