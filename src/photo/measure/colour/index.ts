import type { PixelImage, Point } from '../../types';
import type { Measure, NotMeasured } from '../measure-types';
import { notMeasured } from '../not-measured';
import { adapted } from './adapted';
import { ciede2000 } from './ciede2000';
import { type Lab, type Light, labOf } from './lab';
import { outlineOf, type Patch, readPatch } from './patch';

/** Share of a patch's pixels whose light was lost at the end of the scale that makes it unfit. */
const mostClipped = 0.02;
/** A patch whose middle half spreads further than this share of its light is no one colour. */
const mostSpread = 0.12;
/**
 * Light that a white card or white paper gives back; between 0.85 and 1, which the uncertainty holds.
 * Common practice, no source.
 */
const cardLight = 0.93;

/** Colour of a patch under the white of the same photo; without a white there is none. */
export function measureLab(image: PixelImage, points: readonly Point[], white: readonly Point[] | null): Measure {
  const outline = outlineOf(points, image);
  const where = { form: 'polygon' as const, points: outline };
  const no = (why: NotMeasured): Measure => notMeasured('lab', why, where);
  if (white === null) return no('no-white');
  const patch = fitPatch(image, outline);
  const card = fitPatch(image, outlineOf(white, image));
  if (typeof patch === 'string') return no(patch);
  if (typeof card === 'string') return no(card);
  const lab = labOf(under(patch.light, card.light));
  const uncertainty = Math.hypot(noiseOf(patch, card.light), noiseOf(card, card.light), offUnderCard(lab));
  const [l, a, b] = lab.map((part) => Math.round(part * 100) / 100) as [number, number, number];
  return { what: 'lab', value: [l, a, b], uncertainty, unit: 'de2000', where };
}

/** How far two patches of one photo differ; a white makes it surer, and is not needed. */
export function measureDifference(
  image: PixelImage,
  points: readonly Point[],
  white: readonly Point[] | null,
): Measure {
  const half = points.length / 2;
  const where = { form: 'polygon' as const, points: [...points] };
  if (!Number.isInteger(half)) return notMeasured('difference', 'points', where);
  const pair = pairOf(image, points.slice(0, half), points.slice(half), white);
  if (typeof pair === 'string') return notMeasured('difference', pair, where);
  const value = ciede2000(...pair.labs);
  return { what: 'difference', value, uncertainty: pair.apartOff, unit: 'de2000', where };
}

/** By how much a second patch is darker than a first, greener, or another colour: steps of L*, of a*, of CIEDE2000. What lies in shade is darker too. */
export function changeOfPatch(
  image: PixelImage,
  one: readonly Point[],
  other: readonly Point[],
  white: readonly Point[] | null,
  which: 'darker' | 'greener' | 'any',
): { value: number; uncertainty: number } | NotMeasured {
  const pair = pairOf(image, one, other, white);
  if (typeof pair === 'string') return pair;
  const [first, second] = pair.labs;
  const apart = ciede2000(first, second);
  if (which === 'any') return { value: apart, uncertainty: pair.apartOff };
  const part = which === 'darker' ? 0 : 1;
  const value = first[part] - second[part];
  const off = pair.off(Math.max(Math.abs(value), apart));
  return { value, uncertainty: which === 'greener' ? pair.hueLess * off : off };
}

/** Two patches of one photo as colours, and how far a difference of theirs may be off: in all, and in one part. */
interface Pair {
  labs: readonly [Lab, Lab];
  apartOff: number;
  off: (difference: number) => number;
  /** Lamps of narrow lines shift hues by so much more than what is light or dark. */
  hueLess: number;
}

function pairOf(
  image: PixelImage,
  first: readonly Point[],
  second: readonly Point[],
  white: readonly Point[] | null,
): Pair | NotMeasured {
  const one = fitPatch(image, outlineOf(first, image));
  const other = fitPatch(image, outlineOf(second, image));
  if (typeof one === 'string') return one;
  if (typeof other === 'string') return other;
  const card = white === null ? null : fitPatch(image, outlineOf(white, image));
  const by: Light = card === null || typeof card === 'string' ? [cardLight, cardLight, cardLight] : card.light;
  const light = card === null || typeof card === 'string' ? lightUnknown : lightKnown;
  const labs = [labOf(under(one.light, by)), labOf(under(other.light, by))] as const;
  const noise = Math.hypot(noiseOf(one, by), noiseOf(other, by));
  const off = (least: number): number => Math.hypot(noise, least);
  return {
    labs,
    apartOff: off(offOfApart(labs, light.apart, Math.abs(Math.log(by[0] / by[2])))),
    off: (difference) => off(light.least + light.share * difference),
    hueLess: light.hueLess,
  };
}

/**
 * What a camera and a lamp change of a difference, as found on drawn patches under six lights: they shift hues, and
 * hardly what is light or dark; `apart` is for all of a difference, `cast` for how far the white is from grey, by which
 * the light is from daylight.
 */
const lightUnknown = { least: 0.4, share: 0.36, hueLess: 1.7, apart: { least: 0.5, light: 0.05, hue: 0.5, cast: 0 } };
const lightKnown = { least: 0.3, share: 0.18, hueLess: 2.1, apart: { least: 0.5, light: 0.05, hue: 0.2, cast: 0.1 } };

function offOfApart([one, other]: readonly [Lab, Lab], rules: typeof lightKnown.apart, cast: number): number {
  const sameHue: Lab = [one[0], other[1], other[2]];
  const lighter = ciede2000(sameHue, other);
  const hue = Math.sqrt(Math.max(0, ciede2000(one, other) ** 2 - lighter ** 2));
  return rules.least + rules.light * lighter + (rules.hue + rules.cast * cast) * hue;
}

function fitPatch(image: PixelImage, outline: readonly Point[]): Patch | NotMeasured {
  const patch = readPatch(image, outline);
  if (patch === null) return 'small';
  if (patch.clipped > mostClipped) return 'clipped';
  return patch.spread > mostSpread ? 'uneven' : patch;
}

const under = (light: Light, white: Light): Light => adapted(light, white, cardLight);

/** What the unrest of a patch's pixels makes of its colour. */
function noiseOf({ light, spread }: Patch, white: Light): number {
  const shifted = light.map((part) => part * (1 + spread)) as unknown as Light;
  return ciede2000(labOf(under(light, white)), labOf(under(shifted, white)));
}

/**
 * What remains off with a white card: surfaces that look other under a lamp than by day, of which a white tells nothing
 * (an exact eye under tungsten, adapted by Bradford, is within 4 of the day’s colour in 97 of 100 drawn surfaces, under
 * white LED in 76), cameras that see other than an eye (with its own matrix for tungsten, its white wholly right and no
 * noise, a drawn camera is in 92, since it sees more of the deep reds), cards that are no pure white. It grows with how
 * colourful the patch is. Found on drawn patches under six lights, so that it holds under each.
 */
function offUnderCard([, a, b]: Lab): number {
  return 5 + 0.08 * Math.hypot(a, b);
}
