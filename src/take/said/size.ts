import { foldWords, parseMeasures } from '../../text';
import { wholeWords } from '../words';

export interface SaidSize {
  size: { width: number; height?: number; depth?: number; unit: 'cm' | 'mm' | 'in' };
  start: number;
  end: number;
}

const mmOf = { cm: 10, mm: 1, in: 25.4 };
const round = (value: number) => Math.round(value * 100) / 100;

/** Sides further apart than this in the text are not of one size. */
const farthest = 24;

/** "Two sizes, 28 and 33 cm": each number is a size of its own. */
const between = /^\s?(?:cm|mm|in)?\s?([,;&]|\p{L}{1,6})\s?$/iu;
const joints = wholeWords('and-or');
const isJoint = (text: string): boolean => {
  const joint = between.exec(text)?.[1];
  return joint !== undefined && (/[,;&]/.test(joint) || joints.has(foldWords(joint).text));
};
const areWidths = (text: string, group: readonly { start: number; end: number; measure: { dimension: string } }[]) =>
  group.every(({ measure }) => measure.dimension === 'unknown') &&
  group.slice(1).every(({ start }, at) => isJoint(text.slice(group[at]!.end, start)));

/** "35 x 27 cm (13.8 x 10.6 in)": the size before once more, in another unit. */
const isConverted = (
  one: readonly { measure: { mm: number; unit: string } }[],
  other: readonly { measure: { mm: number; unit: string } }[],
): boolean =>
  one.length === other.length &&
  one[0]!.measure.unit !== other[0]!.measure.unit &&
  one.every(({ measure }, at) => Math.abs(measure.mm - other[at]!.measure.mm) <= measure.mm * 0.06);

/** The sizes of a text: width, height and depth in the order written where no words name them. At least two sides. */
export function readSizes(text: string): SaidSize[] {
  const sides = parseMeasures(text, null).filter(({ measure }) =>
    ['width', 'height', 'depth', 'unknown'].includes(measure.dimension),
  );
  const groups: (typeof sides)[] = [];
  for (const side of sides) {
    const group = groups.at(-1);
    if (
      group &&
      group.length < 3 &&
      // A side that is named belongs to no bare number before it: "the Viaggiatrice 35 is 35 cm wide".
      (side.measure.dimension === 'unknown' ||
        group.every(({ measure }) => !['unknown', side.measure.dimension].includes(measure.dimension))) &&
      side.start - group.at(-1)!.end <= farthest &&
      !text.slice(group.at(-1)!.end, side.start).includes('(')
    )
      group.push(side);
    else groups.push([side]);
  }
  return groups
    .filter((group) => group.length >= 2 && !areWidths(text, group))
    .filter((group, at, all) => at === 0 || !isConverted(all[at - 1]!, group))
    .map((group) => {
      const unit = group[0]!.measure.unit === 'assumed-cm' ? 'cm' : group[0]!.measure.unit;
      const value = (at: number) => round(group[at]!.measure.mm / mmOf[unit]);
      const named = (dimension: string) => group.findIndex(({ measure }) => measure.dimension === dimension);
      const all = ['width', 'height', 'depth'].slice(0, group.length);
      const byName = all.every((dimension) => named(dimension) >= 0);
      const [width, height, depth] = all.map((dimension, at) => value(byName ? named(dimension) : at));
      const size = {
        width: width!,
        ...(height !== undefined && { height }),
        ...(depth !== undefined && { depth }),
        unit,
      };
      return { size, start: group[0]!.start, end: group.at(-1)!.end };
    });
}
