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
  // Stitches and letters are whole, however sure their number is.
  const isWhole = unit === 'stitch' || unit === 'letter';
  const shown = isWhole && Number.isInteger(uncertainty) ? 0 : decimals(uncertainty ?? 0, 2);
  const off = uncertainty === null ? null : kit.number(uncertainty, shown);
  if (typeof value !== 'number') {
    const [l, a, b] = value.map((part) => kit.number(part, 1));
    return words.value(words.lab(l ?? '', a ?? '', b ?? ''), off);
  }
  const fine = isWhole ? 0 : uncertainty ? decimals(uncertainty, 2) : decimals(value, 3);
  // What rounds to nothing has no sign.
  const said = kit.number(Number(value.toFixed(fine)) || 0, fine);
  if (unit === null) return words.value(said, off);
  const isOfPitch = what === 'evenness' && unit === 'share';
  return words.units[isOfPitch ? 'pitch' : unit](words.value(said, off));
}

/** How far along its row each gap lies, from the first point; empty where none is told. */
export function gapsAlong(measured: readonly HandMeasure[]): string[] {
  const [from, to] = measured.find(({ what }) => what === 'count')?.where?.points ?? [];
  const skipped = measured.find(({ what }) => what === 'skipped');
  if (!from || !to || !skipped?.value || !skipped.where) return [];
  const [across, down] = [to.x - from.x, to.y - from.y];
  const along = skipped.where.points.map(
    ({ x, y }) => ((x - from.x) * across + (y - from.y) * down) / (across ** 2 + down ** 2),
  );
  return along.flatMap((share, at) => (at % 2 === 0 ? [kit.percent((share + (along[at + 1] ?? share)) / 2)] : []));
}

/** Decimals that show so many digits of a number, at most four. */
const decimals = (value: number, digits: number): number =>
  Math.min(4, Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value) || 1))));
