import type { GreyImage, Point, Quad } from '../../types';
import { project, projectionOnto, quadSize, warpQuad } from '../../warp';
import type { HandMeasure, NotMeasuredByHand } from '../hand/hand-types';
import { mean } from '../mean';
import { median } from '../median';
import { notMeasured } from '../not-measured';
import { type Box, charactersIn, type Stroke, strengthIn, strokeIn } from './characters';
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
  const straight = straightened(grey, corners, Math.round((high * across) / down), high);
  if (straight === null) return no('flat');
  const ink = inkOf(straight.line, high);
  if (typeof ink === 'string') return no(ink);
  const boxes = charactersIn(ink, letters.length, high);
  if (boxes === null) return no('not-parted');
  const heights = heightsOf(boxes, letters);
  const unit = median(heights);
  const isPart = ({ left, right }: Box, at: number): boolean =>
    right - left < narrowest * unit && !slim.test(letters[at]!);
  if (!(unit > 0.4 * high) || boxes.some(isPart)) return no('not-parted');
  const points = boxes.flatMap(({ left, right, top, bottom }) => [
    straight.placed({ x: left, y: top }),
    straight.placed({ x: right, y: bottom }),
  ]);
  const pixel = high / down / unit;
  const strengths = boxes.map((box) => strengthIn(ink, box));
  return [
    { what: 'letters', value: letters.length, uncertainty: null, unit: 'letter', where: { form: 'polygon', points } },
    ...widths(boxes, unit, Math.hypot(edgeWithin, leaning * within) * pixel),
    stroke(strokeIn(ink, boxes), unit, pixel),
    slope('letter-height-change', 'of-height', heights, edgeWithin / down, (2 * within) / down),
    slope('letter-strength-change', 'of-mean', strengths, 0.02),
  ];
}

/** A line seen straight from the front, with some of what lies around it; `placed` takes a place of it back to the photo. */
function straightened(grey: GreyImage, corners: Quad, long: number, high: number) {
  const projection = projectionOnto(corners, long, high);
  if (projection === null) return null;
  const aside = Math.round(high * margin);
  const placed = ({ x, y }: Point): Point => project(projection, x - aside, y - aside);
  const [width, height] = [long + 2 * aside, high + 2 * aside];
  const outer: Quad = [
    placed({ x: 0, y: 0 }),
    placed({ x: width, y: 0 }),
    placed({ x: width, y: height }),
    placed({ x: 0, y: height }),
  ];
  const line = warpQuad(grey, outer, width, height);
  return line && { line, placed };
}

/** How high the capitals and figures are; all characters where there are none of these. */
function heightsOf(boxes: readonly Box[], letters: readonly string[]): number[] {
  const tall = boxes.filter((_, at) => /[\p{Lu}\p{Nd}]/u.test(letters[at]!));
  return (tall.length > 0 ? tall : boxes).map(({ top, bottom }) => bottom - top);
}

/** Mean width of the characters and of the gaps between them; `unit`: their height, `edges`: how far off an edge is, in it. */
function widths(boxes: readonly Box[], unit: number, edges: number): HandMeasure[] {
  const width = mean(boxes.map(({ left, right }) => (right - left) / unit));
  const gap = mean(boxes.slice(1).map(({ left }, at) => (left - boxes[at]!.right) / unit));
  const share = gap / width;
  return [
    // Each edge is off by itself, and all by what blur and the level of an edge share.
    {
      what: 'letter-width',
      value: width,
      uncertainty: Math.hypot(edges, aslant * width),
      unit: 'of-height',
      where: null,
    },
    // Where a character seems wider, the gap beside it seems narrower.
    { what: 'letter-gap', value: share, uncertainty: (edges / width) * (1 + share), unit: 'of-width', where: null },
  ];
}

/** How wide strokes are, unless they are hardly wider than a pixel or than what the blur makes of them. */
function stroke({ width, widened, blur }: Stroke, unit: number, pixel: number): HandMeasure {
  const value = width / unit;
  if (value / pixel < leastStroke || width + widened < leastOfBlur * blur)
    return notMeasured('letter-stroke', 'blurred');
  const uncertainty = Math.hypot(0.6 * pixel, 0.12 * value, widened / unit);
  return { what: 'letter-stroke', value, uncertainty, unit: 'of-height', where: null };
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
  if (count < 3 || level <= 0) return notMeasured(what, 'small');
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
