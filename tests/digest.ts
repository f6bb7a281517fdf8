/** FNV-1a, 32 bits, in letters and digits: whether something large is as it was, where its whole would fill megabytes. */
export function digestOf(value: unknown): string {
  let hash = 0x811c9dc5;
  for (const unit of JSON.stringify(value) ?? '') hash = Math.imul(hash ^ (unit.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash.toString(36).padStart(7, '0');
}
