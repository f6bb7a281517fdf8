import { flatten, type GreyImage, type Quad, quadSize } from '../photo';
import type { Measurement } from './types';

/**
 * What a line's geometry says, from the middles of its characters (shares of the crop's width, left to right) and the
 * upright crop. Lengths are given in pixels of the photo, so that they can be held against the photo; the rest as
 * shares of the character's height. Fewer than three characters measure nothing but their height and tilt.
 */
export function measureLine(crop: GreyImage, quad: Quad, middles: readonly number[]): Measurement[] {
  const { across, down } = quadSize(quad);
  const [a, b] = quad;
  const tilt = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const sure = (Math.atan2(1, Math.max(1, across)) * 180) / Math.PI;
  const measured: Measurement[] = [
    { what: 'height', value: down, uncertainty: Math.max(0.5, down * 0.06), unit: 'px' },
    { what: 'tilt', value: tilt, uncertainty: sure, unit: 'degree' },
  ];
  if (middles.length < 3) return measured;
  const gaps = middles.slice(1).map((middle, at) => (middle - middles[at]!) * across);
  const pitch = mean(gaps);
  const spread = deviation(gaps);
  const count = gaps.length;
  measured.push({ what: 'pitch', value: pitch, uncertainty: spread / Math.sqrt(count) + 0.5, unit: 'px' });
  measured.push({
    what: 'pitch-spread',
    value: pitch > 0 ? spread / pitch : 0,
    uncertainty: (pitch > 0 ? spread / pitch : 0) / Math.sqrt(2 * (count - 1) || 1) + 0.5 / Math.max(1, pitch),
    unit: 'share',
  });
  return [...measured, ...measureDepth(crop, middles, pitch / across)];
}

/**
 * Depth cannot be seen, only how strongly each character stands out; evenly lit, that is the same thing. `half` a
 * pitch each side of a character's middle is its own.
 */
function measureDepth(crop: GreyImage, middles: readonly number[], pitch: number): Measurement[] {
  const flat = flatten(crop, Math.max(4, crop.height >> 1), 48, 6);
  const strengths: number[] = [];
  const rows: number[] = [];
  for (const middle of middles) {
    const from = Math.max(0, Math.floor((middle - pitch * 0.5) * crop.width));
    const to = Math.min(crop.width, Math.ceil((middle + pitch * 0.5) * crop.width));
    let squares = 0;
    let count = 0;
    let sum = 0;
    let energy = 0;
    let weighted = 0;
    for (let row = 0; row < crop.height; row++) {
      for (let column = from; column < to; column++) {
        const value = crop.data[row * crop.width + column]!;
        sum += value;
        squares += value * value;
        count++;
        const out = Math.abs(flat.data[row * crop.width + column]! - 128) ** 2;
        energy += out;
        weighted += out * (row + 0.5);
      }
    }
    if (count === 0 || energy === 0) continue;
    strengths.push(Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2)));
    rows.push(weighted / energy / crop.height);
  }
  if (strengths.length < 3) return [];
  const strength = mean(strengths);
  const { slope, uncertainty } = trend(strengths);
  const last = strengths.length - 1;
  const straightRows = trend(rows);
  const off = rows.map((row, at) => row - straightRows.start - straightRows.slope * at);
  const share = 1 / Math.sqrt(2 * last);
  const depthSpread = deviation(strengths) / Math.max(1, strength);
  return [
    {
      what: 'contrast',
      value: strength / 255,
      uncertainty: deviation(strengths) / 255 / Math.sqrt(last + 1),
      unit: 'share',
    },
    {
      what: 'depth-slope',
      value: (slope * last) / Math.max(1, strength),
      uncertainty: (uncertainty * last) / Math.max(1, strength),
      unit: 'share',
    },
    { what: 'depth-spread', value: depthSpread, uncertainty: depthSpread * share, unit: 'share' },
    { what: 'baseline-spread', value: deviation(off), uncertainty: deviation(off) * share + 0.02, unit: 'share' },
  ];
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

function deviation(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const centre = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1));
}

/** Least-squares line through values at places 0, 1, 2, …, and the standard error of its slope. */
function trend(values: readonly number[]): { start: number; slope: number; uncertainty: number } {
  const count = values.length;
  const centre = (count - 1) / 2;
  const level = mean(values);
  let across = 0;
  let rise = 0;
  values.forEach((value, at) => {
    across += (at - centre) ** 2;
    rise += (at - centre) * (value - level);
  });
  const slope = rise / across;
  const left = values.reduce((sum, value, at) => sum + (value - level - slope * (at - centre)) ** 2, 0);
  return { start: level - slope * centre, slope, uncertainty: Math.sqrt(left / Math.max(1, count - 2) / across) };
}
