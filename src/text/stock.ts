/** More than a shop has of one bag: a count of something else. */
const most = 999;
const label = 'in stock: ';

/** How many of one kind a page's data has, as the words of what it says of its stock; null for the one piece, or none. */
export function stockWords(quantity: string | null): string | null {
  const count = Number(quantity);
  return quantity !== null && Number.isInteger(count) && count > 1 && count <= most ? `${label}${count}` : null;
}

/** The count in such words; null for others. */
export const countInStock = (words: string | undefined): number | null =>
  words?.startsWith(label) ? Number(words.slice(label.length)) : null;
