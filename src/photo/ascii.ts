/** Bytes as characters; what lies beyond the end is left out. */
export function ascii(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + Math.max(0, length)));
}
