/** "a", "a and b", "a, b and c" */
export const listOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;

/** "a", "a or b", "a, b or c" */
export const anyOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;

/** The words in quotation marks, spaces evened, cut to what one line can hold. */
export function quoted(words: string): string {
  const line = words.replace(/\s+/g, ' ').trim();
  return `“${line.length > 80 ? `${line.slice(0, 79).trimEnd()}…` : line}”`;
}

/** A statement as a clause inside another sentence: a leading "The" loses its capital, names keep theirs. */
export const asClause = (statement: string): string =>
  statement.replace(/^(?:The|A|An|With)\b/, (word) => word.toLowerCase());

/** A maker file by name; an invented one is always called so. */
export const fileWords = (maker: string, invented?: boolean): string =>
  `${invented ? 'invented ' : ''}maker file of ${maker}`;
