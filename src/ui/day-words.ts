/** An ISO date and time as a day in the reader's own language. */
export const dayWords = (at: string): string =>
  new Date(at).toLocaleDateString(undefined, { year: 'numeric', month: 'short', day: 'numeric' });
