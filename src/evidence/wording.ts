/** "a", "a and b", "a, b and c" */
export const listOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** A maker file by name; an invented one is always called so. */
export const fileWords = (maker: string, invented?: boolean): string =>
  `${invented ? 'invented ' : ''}maker file of ${maker}`;
