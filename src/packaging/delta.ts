/** A run is copied from the other file where so many bytes agree: shorter ones cost more to name than to write. */
const leastRun = 16;
const tableBits = 22;

/**
 * What has to be known of a file beside another that it shares most of its bytes with, in the form that
 * `src/reader/restored.ts` reads: from each place the run of the other file that the last one leads on to, else the one
 * that begins with the next sixteen bytes, as far as both agree.
 */
export function deltaOf(whole: Uint8Array, base: Uint8Array): Uint8Array {
  const placeOf = placesIn(base);
  const steps: number[] = [];
  const fresh: Uint8Array[] = [];
  let copied = 0;
  let written = 0;
  for (let at = 0; at + leastRun <= whole.length; ) {
    const from = [copied, placeOf(whole, at)].find((place) => runAt(whole, at, base, place) >= leastRun);
    if (from === undefined) {
      at += 1;
      continue;
    }
    const run = runAt(whole, at, base, from);
    steps.push(...number(at - written), ...number(signed(from - copied)), ...number(run));
    fresh.push(whole.subarray(written, at));
    [copied, written, at] = [from + run, at + run, at + run];
  }
  steps.push(...number(whole.length - written), 0, 0);
  fresh.push(whole.subarray(written));
  return Buffer.concat([Uint8Array.from([...number(whole.length), ...number(steps.length), ...steps]), ...fresh]);
}

function runAt(whole: Uint8Array, at: number, base: Uint8Array, from: number): number {
  let run = 0;
  while (from + run < base.length && at + run < whole.length && whole[at + run] === base[from + run]) run += 1;
  return run;
}

/** Where the bytes that begin at a place of another file stood last, as far as their hash tells; 0 for none. */
function placesIn(base: Uint8Array): (file: Uint8Array, at: number) => number {
  const places = new Int32Array(1 << tableBits);
  for (let at = 0; at + leastRun <= base.length; at += 1) places[hashAt(base, at)] = at;
  return (file, at) => places[hashAt(file, at)] as number;
}

function hashAt(file: Uint8Array, at: number): number {
  let hash = 0;
  for (let next = at; next < at + leastRun; next += 1) hash = Math.imul(hash ^ (file[next] as number), 0x01000193);
  return hash >>> (32 - tableBits);
}

/** LEB128: seven bits a byte, the lowest first. */
function number(value: number): number[] {
  return value < 128 ? [value] : [(value % 128) + 128, ...number(Math.floor(value / 128))];
}
const signed = (value: number): number => (value < 0 ? -2 * value - 1 : 2 * value);
