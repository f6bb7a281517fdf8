import type { Lab } from './lab';

const radian = Math.PI / 180;
const seventh = 25 ** 7;

/**
 * Difference of two colours by CIEDE2000, kL = kC = kH = 1.
 * Source: G. Sharma, W. Wu, E. N. Dalal, Color Research & Application 30(1), 21–30 (2005).
 */
export function ciede2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const meanC = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(meanC ** 7 / (meanC ** 7 + seventh)));
  const [x1, x2] = [a1 * (1 + g), a2 * (1 + g)];
  const [c1, c2] = [Math.hypot(x1, b1), Math.hypot(x2, b2)];
  const [h1, h2] = [hue(x1, b1), hue(x2, b2)];
  const grey = c1 * c2 === 0;
  let turn = h2 - h1;
  if (grey) turn = 0;
  else if (turn > 180) turn -= 360;
  else if (turn < -180) turn += 360;
  const deltaH = 2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * radian);
  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  let h = h1 + h2;
  if (!grey) h = Math.abs(h1 - h2) <= 180 ? h / 2 : h < 360 ? (h + 360) / 2 : (h - 360) / 2;
  const t =
    1 -
    0.17 * Math.cos((h - 30) * radian) +
    0.24 * Math.cos(2 * h * radian) +
    0.32 * Math.cos((3 * h + 6) * radian) -
    0.2 * Math.cos((4 * h - 63) * radian);
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sc = 1 + 0.045 * c;
  const sh = 1 + 0.015 * c * t;
  const rotation =
    -Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * radian) * 2 * Math.sqrt(c ** 7 / (c ** 7 + seventh));
  const [dl, dc, dh] = [(l2 - l1) / sl, (c2 - c1) / sc, deltaH / sh];
  return Math.sqrt(dl * dl + dc * dc + dh * dh + rotation * dc * dh);
}

function hue(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) / radian;
  return degrees < 0 ? degrees + 360 : degrees;
}
