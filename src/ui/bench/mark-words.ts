import type { HandMark, HandMeasure } from '../../photo';
import { kit, strings } from '../../words';

/** Kinds that a case from elsewhere holds may have no name here: they are called as they are written. */
const named = (names: object, key: string): string =>
  (names as Readonly<Record<string, string | undefined>>)[key] ?? key;

export const markWords = ({ number, kind, name }: HandMark): string =>
  strings.bench.named(number, named(strings.bench.kinds, kind), name);

export const measureName = ({ what, against }: Pick<HandMeasure, 'what' | 'against'>): string =>
  against === undefined
    ? named(strings.bench.what, what)
    : `${named(strings.bench.what, what)}, ${strings.bench.against(against)}`;

/** What was measured, with its unit and how far off it may be; or why it was not. */
export function measureWords({ what, value, uncertainty, unit, why }: Omit<HandMeasure, 'where' | 'against'>): string {
  const words = strings.bench;
  if (value === null) return words.notMeasured(named(words.why, why ?? ''));
  if (value === 'turned' || value === 'upright') return words[value];
  const off = uncertainty === null ? null : kit.number(uncertainty, decimals(uncertainty, 2));
  if (typeof value !== 'number') {
    const [l, a, b] = value.map((part) => kit.number(part, 1));
    return words.value(words.lab(l ?? '', a ?? '', b ?? ''), off);
  }
  // Stitches and letters are whole, however sure their number is.
  const fine = unit === 'stitch' || unit === 'letter' ? 0 : uncertainty ? decimals(uncertainty, 2) : decimals(value, 3);
  // What rounds to nothing has no sign.
  const said = kit.number(Number(value.toFixed(fine)) || 0, fine);
  if (unit === null) return words.value(said, off);
  const isOfPitch = what === 'evenness' && unit === 'share';
  return words.units[isOfPitch ? 'pitch' : unit](words.value(said, off));
}

/** Decimals that show so many digits of a number, at most four. */
const decimals = (value: number, digits: number): number =>
  Math.min(4, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value) || 1))));
