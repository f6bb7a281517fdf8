/** A text with some places of it blanked, in their order, so that what else it tells can be read where it stands. */
export function blanked(text: string, places: readonly { start: number; end: number }[]): string {
  const kept: string[] = [];
  let from = 0;
  for (const { start, end } of places) {
    kept.push(text.slice(from, start), ' '.repeat(Math.max(0, end - Math.max(start, from))));
    from = Math.max(from, end);
  }
  return kept.join('') + text.slice(from);
}
