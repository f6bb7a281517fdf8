/** Where a language file lists the place of its word list, among the places of its parts (Tesseract, `tessdatamanager.h`). */
const wordListAt = 19;
/** Ahead of a word list's edges: two bytes of its kind, the number of the language's characters, the number of edges (`dawg.cpp`). */
const headBytes = 10;
/** An edge has its character's bits lowest, three flags above them, and above those the place of the edge it leads to. */
const flagBits = 3;
/** Of the flags: the edge is its node's last. */
const isLast = 1;

/**
 * A language file of the print engine, its word list told in the form that `src/reader/language-file.ts` reads: what all
 * edges have in one place of their eight bytes stands together, and an edge names its next node by that node's number. It
 * is a third smaller, and an archive packs it smaller too. Throws where an edge has no room in that form.
 */
export function packedLanguage(file: Uint8Array): Uint8Array {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const list = Number(view.getBigInt64(4 + 8 * wordListAt, true));
  const letterBits = Math.ceil(Math.log2(view.getInt32(list + 2, true) + 1));
  const count = view.getInt32(list + 6, true);
  const start = list + headBytes;
  const edges = Array.from({ length: count }, (_, at) => Number(view.getBigUint64(start + 8 * at, true)));
  const flagsOf = (edge: number) => (edge >>> letterBits) % 2 ** flagBits;
  const numbers = new Map([[0, 0]]);
  for (const [at, edge] of edges.entries()) if (flagsOf(edge) & isLast) numbers.set(at + 1, numbers.size);
  const nodes = edges.map((edge) => {
    const node = numbers.get(edge >>> (letterBits + flagBits));
    if (node === undefined || node >= 2 ** 24 || edge >= 2 ** 32)
      throw new Error('the word list has an edge of another form');
    return node;
  });
  return Buffer.concat([
    new Uint8Array(new Uint32Array([start, count, letterBits]).buffer),
    file.subarray(0, start),
    Uint8Array.from(edges, (edge) => edge % 2 ** letterBits),
    Uint8Array.from(edges, flagsOf),
    ...[0, 8, 16].map((shift) => Uint8Array.from(nodes, (node) => (node >> shift) % 256)),
    file.subarray(start + 8 * count),
  ]);
}
