export interface Edge {
  letter: number;
  flags: number;
  /** Which edge is the first of the node that it leads to. */
  leadsTo: number;
}
const parts = 24;

/** A language file with a word list of these edges between two other parts, of a language of 112 characters. */
export function languageOf(edges: readonly Edge[]): Uint8Array {
  const list = 4 + 8 * parts + 5;
  const file = Buffer.alloc(list + 10 + 8 * edges.length + 3, 7);
  file.writeInt32LE(parts, 0);
  for (let part = 0; part < parts; part += 1) file.writeBigInt64LE(part === 19 ? BigInt(list) : -1n, 4 + 8 * part);
  file.writeInt16LE(42, list);
  file.writeInt32LE(112, list + 2);
  file.writeInt32LE(edges.length, list + 6);
  for (const [at, { letter, flags, leadsTo }] of edges.entries())
    file.writeBigUInt64LE(BigInt(letter) | (BigInt(flags) << 7n) | (BigInt(leadsTo) << 10n), list + 10 + 8 * at);
  return new Uint8Array(file);
}
