/**
 * The file that a delta tells beside another one. The delta holds numbers in LEB128: the file's length, how many bytes
 * the steps take, the steps, and then all bytes that are new. A step is three numbers: so many new bytes, how far from
 * the end of the last run the next one begins in the other file (twice the way, less one where it leads back), and how
 * many bytes it has. Throws where the two do not belong together.
 */
export function restored(base: Uint8Array, delta: Uint8Array): Uint8Array<ArrayBuffer> {
  let read = 0;
  const number = (): number => {
    let value = 0;
    for (let weight = 1; ; weight *= 128) {
      const byte = delta[read++];
      if (byte === undefined) throw wrong();
      value += (byte % 128) * weight;
      if (byte < 128) return value;
    }
  };
  const whole = new Uint8Array(number());
  const steps = number();
  const end = read + steps;
  let [fresh, copied, written] = [end, 0, 0];
  const write = (bytes: Uint8Array, count: number) => {
    if (bytes.length < count || written + count > whole.length) throw wrong();
    whole.set(bytes.subarray(0, count), written);
    written += count;
  };
  while (read < end) {
    const [added, way, run] = [number(), number(), number()];
    write(delta.subarray(fresh), added);
    fresh += added;
    const from = copied + (way % 2 === 0 ? way / 2 : -(way + 1) / 2);
    write(base.subarray(Math.max(0, from)), run);
    copied = from + run;
  }
  if (written < whole.length || fresh < delta.length) throw wrong();
  return whole;
}

const wrong = () => new Error('a file of the extension does not fit the one that it is made from');
