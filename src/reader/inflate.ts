/** Bytes out of a zlib stream (RFC 1950), at most so many; null where it is none, or ends too early. */
export async function inflate(packed: Uint8Array<ArrayBuffer>, most: number): Promise<Uint8Array | null> {
  const out = new Uint8Array(most);
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream('deflate')).getReader();
  try {
    let to = 0;
    while (to < most) {
      const { done, value } = await reader.read();
      if (done) return null;
      out.set(value.subarray(0, most - to), to);
      to += value.length;
    }
    return out;
  } catch {
    return null;
  } finally {
    // What is beyond is not unpacked: a small file can claim to hold any length.
    reader.cancel().catch(() => {});
  }
}
