/** Rows that share a key, in the order of their first member. (Map.groupBy is newer than the language level set here.) */
export function groupBy<T>(rows: readonly T[], keyOf: (row: T) => string): [string, T[]][] {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return [...groups];
}
