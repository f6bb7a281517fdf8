import type { PixelImage, Point } from '../../types';
import { type Measure, type NotMeasured, notMeasured } from '../measure-types';
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
  const no = (why: NotMeasured): Measure => notMeasured('difference', why, where);
  if (!Number.isInteger(half)) return no('points');
  const one = fitPatch(image, outlineOf(points.slice(0, half), image));
  const other = fitPatch(image, outlineOf(points.slice(half), image));
  if (typeof one === 'string') return no(one);
  if (typeof other === 'string') return no(other);
  const card = white === null ? null : fitPatch(image, outlineOf(white, image));
  const by: Light = card === null || typeof card === 'string' ? [cardLight, cardLight, cardLight] : card.light;
  const labs = [labOf(under(one.light, by)), labOf(under(other.light, by))] as const;
  const value = ciede2000(...labs);
  const light = card === null || typeof card === 'string' ? lightUnknown : lightKnown;
  const uncertainty = Math.hypot(noiseOf(one, by), noiseOf(other, by), light.least + light.share * value);
  return { what: 'difference', value, uncertainty, unit: 'de2000', where };
}

/** What a camera and a lamp change of a difference, as found on drawn patches under six lights. */
const lightUnknown = { least: 0.4, share: 0.34 };
const lightKnown = { least: 0.3, share: 0.18 };

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
 * What remains off with a white card: lamps of narrow lines, cameras that see other than an eye, cards that are no pure
 * white. It grows with how colourful the patch is. Found on drawn patches under six lights, white LED and tube among them.
 */
function offUnderCard([, a, b]: Lab): number {
  return 4.2 + 0.08 * Math.hypot(a, b);
}
