/** Of the three flags of an edge: it is its node's last. */
const isLast = 1;
const flagBits = 3;
const headBytes = 12;

/**
 * A language file of the print engine, made of the form in which it is packed. That begins with three numbers of four
 * bytes, the lowest first: where the edges of the file's word list begin, how many there are, and how many bits of each
 * are its character. Then come the bytes ahead of the edges; all characters; all flags; the lowest, middle and highest
 * byte of the number of each edge's next node; and the bytes behind the edges. An edge has eight bytes: its character,
 * its flags, and the place of its next node's first edge. Throws where the bytes are no such file.
 */
export function languageFile(packed: Uint8Array): Uint8Array<ArrayBuffer> {
  if (packed.length < headBytes) throw wrong();
  const head = new DataView(packed.buffer, packed.byteOffset);
  const [start, count, letterBits] = [head.getUint32(0, true), head.getUint32(4, true), head.getUint32(8, true)];
  const planes = headBytes + start;
  const rest = planes + 5 * count;
  if (rest > packed.length) throw wrong();
  const plane = (at: number) => packed.subarray(planes + at * count, planes + (at + 1) * count);
  const [characters, flags] = [plane(0), plane(1)];
  const [low, middle, high] = [plane(2), plane(3), plane(4)];

  const firstEdges = new Uint32Array(count + 1);
  let nodes = 1;
  for (let at = 0; at < count; at += 1) if (flags[at]! & isLast) firstEdges[nodes++] = at + 1;

  const whole = new Uint8Array(start + 8 * count + packed.length - rest);
  whole.set(packed.subarray(headBytes, planes));
  const edges = new DataView(whole.buffer, start);
  for (let at = 0; at < count; at += 1) {
    const node = low[at]! + 0x100 * middle[at]! + 0x10000 * high[at]!;
    if (node >= nodes) throw wrong();
    const edge = (firstEdges[node]! << (letterBits + flagBits)) | (flags[at]! << letterBits) | characters[at]!;
    edges.setUint32(8 * at, edge, true);
  }
  whole.set(packed.subarray(rest), start + 8 * count);
  return whole;
}

const wrong = () => new Error('the print reader’s language file is not whole');
