/** Whether two findings, or what they say, hold the same data, whatever the order in which its fields were written. */
export const sameData = (one: unknown, other: unknown): boolean => textOf(one) === textOf(other);

const textOf = (data: unknown): string =>
  JSON.stringify(data, (_, value) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );
