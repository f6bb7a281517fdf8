/**
 * Bytes out of PackBits, at most so many; shorter where the packed ones end before. Source: TIFF 6.0, section 9.
 */
export function fromPackBits(packed: Uint8Array, length: number): Uint8Array {
  const out = new Uint8Array(length);
  let [at, to] = [0, 0];
  while (at < packed.length && to < length) {
    const code = packed[at++]!;
    if (code < 128) {
      const run = packed.subarray(at, at + Math.min(code + 1, length - to));
      out.set(run, to);
      at += code + 1;
      to += run.length;
    } else if (code > 128) {
      const end = Math.min(length, to + 257 - code);
      if (at < packed.length) out.fill(packed[at++]!, to, end);
      to = end;
    }
  }
  return to < length ? out.subarray(0, to) : out;
}

const clear = 256;
const endOfData = 257;
const mostCodes = 4096;

/**
 * Bytes out of LZW as TIFF packs it: codes of 9 to 12 bits, the highest bit first, grown one code early; at most so many,
 * shorter where the packed ones end before or say what they cannot. Source: TIFF 6.0, section 13.
 */
export function fromLzw(packed: Uint8Array, length: number): Uint8Array {
  const out = new Uint8Array(length);
  // A code is a byte behind what an earlier code stands for: where that begins and ends in what is out already.
  const begins = new Uint32Array(mostCodes);
  const ends = new Uint32Array(mostCodes);
  let [at, held, bits, width, next, to] = [0, 0, 0, 9, 258, 0];
  let before = -1;
  while (to < length) {
    while (bits < width && at < packed.length) {
      held = ((held << 8) | packed[at++]!) & 0xffffff;
      bits += 8;
    }
    if (bits < width) break;
    bits -= width;
    const code = (held >> bits) & ((1 << width) - 1);
    if (code === endOfData) break;
    if (code === clear) {
      [width, next, before] = [9, 258, -1];
      continue;
    }
    const from = to;
    if (code < clear) out[to++] = code;
    else if (code < next) to = copied(out, begins[code]!, ends[code]!, to);
    else if (code === next && before >= 0) {
      // What this code stands for is being said with it: the last one and its own first byte.
      to = copied(out, before, from, to);
      if (to < length) out[to++] = out[from]!;
    } else break;
    if (before >= 0 && next < mostCodes) {
      begins[next] = before;
      ends[next] = from + 1;
      next++;
    }
    before = from;
    if (next + 1 >= 1 << width && width < 12) width++;
  }
  return to < length ? out.subarray(0, to) : out;
}

/** Copies what is out already to its end, as far as there is room; gives the new end. */
function copied(out: Uint8Array, from: number, until: number, to: number): number {
  const end = Math.min(out.length, to + until - from);
  for (let source = from; to < end; ) out[to++] = out[source++]!;
  return end;
}
