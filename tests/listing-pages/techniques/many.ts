/** So many pieces of a page, one after the other. */
export const many = (count: number, one: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => one(at)).join('');
