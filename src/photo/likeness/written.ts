/** Samples of a likeness's side. */
export const side = 32;
/** A digit for each step of brightness. Fewer steps than these and what a plain photo shows is lost between them. */
export const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const bitsOfDigit = 6;
/** What begins otherwise was written by an older build, a digit for each sample. */
const mark = '.';

/**
 * 32 × 32 samples of 0 to 63 as text, in two fifths of a digit each: what each is off from what those before it let expect,
 * in as many bits as those beside it needed (Rice coding).
 */
export function written(samples: ArrayLike<number>): string {
  const offs = new Float64Array(side * side);
  let bits = '';
  for (let at = 0; at < offs.length; at++) {
    const off = samples[at]! - expected(samples, at);
    offs[at] = off < 0 ? -2 * off - 1 : 2 * off;
    const low = lowBits(offs, at);
    bits += '1'.repeat(offs[at]! >> low) + (offs[at]! % 2 ** low).toString(2).padStart(low + 1, '0');
  }
  let text = mark;
  for (let at = 0; at < bits.length; at += bitsOfDigit)
    text += digits[Number.parseInt(bits.slice(at, at + bitsOfDigit).padEnd(bitsOfDigit, '0'), 2)];
  return text;
}

/** The samples of a written likeness. Of one that is cut off the rest is as expected. */
export function samplesIn(likeness: string): Float32Array {
  if (!likeness.startsWith(mark)) return Float32Array.from(likeness, (digit) => digits.indexOf(digit));
  const bits = Array.from(likeness.slice(mark.length), (digit) =>
    Math.max(0, digits.indexOf(digit)).toString(2).padStart(bitsOfDigit, '0'),
  ).join('');
  const samples = new Float32Array(side * side);
  const offs = new Float64Array(side * side);
  let bit = 0;
  for (let at = 0; at < samples.length; at++) {
    const low = lowBits(offs, at);
    let high = 0;
    while (bits[bit + high] === '1') high++;
    bit += high + 1;
    offs[at] = high * 2 ** low + Number.parseInt(`0${bits.slice(bit, bit + low)}`, 2);
    bit += low;
    const off = offs[at]! % 2 === 1 ? -(offs[at]! + 1) / 2 : offs[at]! / 2;
    samples[at] = Math.min(digits.length - 1, Math.max(0, expected(samples, at) + off));
  }
  return samples;
}

/** What a sample is by those to the left and above it: the predictor of JPEG-LS (ISO/IEC 14495-1, from memory). */
function expected(samples: ArrayLike<number>, at: number): number {
  const x = at % side;
  if (at < side) return x === 0 ? 0 : samples[at - 1]!;
  const above = samples[at - side]!;
  if (x === 0) return above;
  const [left, corner] = [samples[at - 1]!, samples[at - side - 1]!];
  return Math.min(Math.max(left, above), Math.max(Math.min(left, above), left + above - corner));
}

/** How many bits of a sample's “off” are written as they are, by the mean of those beside it. */
function lowBits(offs: Float64Array, at: number): number {
  const x = at % side;
  const left = x === 0 ? 0 : offs[at - 1]!;
  const above = at < side ? 0 : offs[at - side]!;
  const corners = at < side ? 0 : (x === 0 ? 0 : offs[at - side - 1]!) + (x === side - 1 ? 0 : offs[at - side + 1]!);
  const mean = (2 * left + 2 * above + corners) / 6;
  let bits = 0;
  while (bits < mostLowBits && 2 ** bits < 0.7 * mean + 0.3) bits++;
  return bits;
}
const mostLowBits = 5;
