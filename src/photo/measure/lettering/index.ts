import type { GreyImage, Point, Quad } from '../../types';
import { project, projectionOnto, quadSize, warpQuad } from '../../warp';
import type { HandMeasure, NotMeasuredByHand } from '../hand/hand-types';
import { notMeasured } from '../measure-types';
import { type Box, charactersIn, strengthIn, strokeIn } from './characters';
import { inkOf } from './ink';
import { lettersOf } from './letters';

/** Lines whose characters are lower hold too few pixels to tell a stroke, pixels of the photo. */
const leastHigh = 14;
/** A stroke narrower than so many pixels is as wide as the blur makes it. */
const leastStroke = 2;
/** Nor is one told that shows under so many deviations of the blur: at 3.8 nothing but the blur is seen. */
const leastOfBlur = 5.5;
/** What is narrower is one stroke of a character that fell apart, unless the character is no more than a stroke; share of the height. */
const narrowest = 0.2;
const slim = /[Iil1jJtfr.,:;'’!|()[\]/\\-]/u;
/** Height that a line is straightened to, and what is taken in around it, shares of its height. */
const [most, margin] = [96, 0.2];
/** A photo taken aslant by 25° narrows characters by so much, and no mark tells it. */
const aslant = 0.1;
/** How far off an edge of a character is told, pixels of the photo. Found on drawn lines. */
const edgeWithin = 1.1;
/** What a corner that is set off makes of a character's edges, which then lean: share of how far it may be off. */
const leaning = 0.8;

/**
 * A line of characters as ratios to the height of its capitals and figures, which its corners enclose and `text` spells.
 * Where a photo is not taken straight on, widths are narrower; their ratios among each other stay.
 */
export function measureLettering(grey: GreyImage, corners: Quad, text: string, within: number): HandMeasure[] {
  const no = (why: NotMeasuredByHand): HandMeasure[] => [
    notMeasured('letters', why, { form: 'quad', points: corners }),
  ];
  const letters = lettersOf(text);
  if (letters.length < 2) return no('no-text');
  const { across, down } = quadSize(corners);
  if (!(down >= leastHigh && across >= down)) return no('small');
  const high = Math.round(Math.min(most, Math.max(32, down * 1.5)));
  const long = Math.round((high * across) / down);
  const projection = projectionOnto(corners, long, high);
  if (projection === null) return no('flat');
  const aside = Math.round(high * margin);
  const placed = ({ x, y }: Point): Point => project(projection, x - aside, y - aside);
  const [width, height] = [long + 2 * aside, high + 2 * aside];
  const outer = [0, 1, 2, 3].map((at) =>
    placed({ x: at === 1 || at === 2 ? width : 0, y: at > 1 ? height : 0 }),
  ) as unknown as Quad;
  const line = warpQuad(grey, outer, width, height);
  if (line === null) return no('flat');
  const ink = inkOf(line, high);
  if (typeof ink === 'string') return no(ink);
  const boxes = charactersIn(ink, letters.length, high);
  if (boxes === null) return no('not-parted');
  const tall = boxes.filter((_, at) => /[\p{Lu}\p{Nd}]/u.test(letters[at]!));
  const heights = (tall.length > 0 ? tall : boxes).map(({ top, bottom }) => bottom - top);
  const height1 = median(heights);
  const isPart = ({ left, right }: Box, at: number): boolean =>
    right - left < narrowest * height1 && !slim.test(letters[at]!);
  if (!(height1 > 0.4 * high) || boxes.some(isPart)) return no('not-parted');
  const where = {
    form: 'polygon' as const,
    points: boxes.flatMap(({ left, right, top, bottom }) => [
      placed({ x: left, y: top }),
      placed({ x: right, y: bottom }),
    ]),
  };
  const pixel = high / down / height1;
  const edges = Math.hypot(edgeWithin, leaning * within) * pixel;
  const told = (what: HandMeasure['what'], value: number, uncertainty: number): HandMeasure => ({
    what,
    value,
    uncertainty,
    unit: 'of-height',
    where: null,
  });
  const widths = boxes.map(({ left, right }) => (right - left) / height1);
  const gaps = boxes.slice(1).map(({ left }, at) => (left - boxes[at]!.right) / height1);
  // Each edge is off by itself, and all by what blur and the level of an edge share.
  const sides = (mean: number): number => Math.hypot(edges, aslant * mean);
  const [width1, gap1] = [mean(widths), mean(gaps)];
  // Where a character seems wider, the gap beside it seems narrower.
  const ofWidth = (share: number): number => (edges / width1) * (1 + share);
  const { width: thick, widened, blur } = strokeIn(ink, boxes);
  const stroke = thick / height1;
  const strokeTold =
    stroke / pixel < leastStroke || thick + widened < leastOfBlur * blur
      ? notMeasured('letter-stroke' as const, 'blurred' as const)
      : told('letter-stroke', stroke, Math.hypot(0.6 * pixel, 0.12 * stroke, widened / height1));
  return [
    { what: 'letters', value: letters.length, uncertainty: null, unit: 'letter', where },
    told('letter-width', width1, sides(width1)),
    { ...told('letter-gap', gap1 / width1, ofWidth(gap1 / width1)), unit: 'of-width' },
    strokeTold,
    slope('letter-height-change', 'of-height', heights, edgeWithin / down, (2 * within) / down),
    slope(
      'letter-strength-change',
      'of-mean',
      boxes.map((box) => strengthIn(ink, box)),
      0.02,
    ),
  ];
}

/** By how much a number changes from the first character to the last, as a share of its mean; a straight line through all. */
function slope(
  what: 'letter-height-change' | 'letter-strength-change',
  unit: 'of-height' | 'of-mean',
  values: readonly number[],
  each: number,
  ends = 0,
): HandMeasure {
  const count = values.length;
  const level = mean(values);
  if (count < 3 || level <= 0) return notMeasured(what, 'small' as const);
  const middle = (count - 1) / 2;
  const across = values.reduce((sum, _, at) => sum + (at - middle) ** 2, 0);
  const rise = values.reduce((sum, value, at) => sum + (at - middle) * (value - level), 0) / across;
  const left = values.reduce((sum, value, at) => sum + (value - level - rise * (at - middle)) ** 2, 0);
  const off = Math.hypot(Math.sqrt(left / Math.max(1, count - 2)), each * level) * (count < 6 ? 3 : 2);
  const long = (count - 1) / level;
  return {
    what,
    value: rise * long,
    uncertainty: Math.hypot((off / Math.sqrt(across)) * long, ends),
    unit,
    where: null,
  };
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}
