import type { Tally } from './tally';

/** One row a name, one column a tally. */
export function printTallies(columns: Readonly<Record<string, Tally>>): void {
  const names = [...new Set(Object.values(columns).flatMap((tally) => [...tally.keys()]))];
  const share = (tally: Tally, name: string): string => {
    const row = tally.get(name);
    return row === undefined ? '–' : `${((100 * row.hits) / row.of).toFixed(1)}% of ${row.of}`;
  };
  console.table(
    Object.fromEntries(
      names.map((name) => [
        name,
        Object.fromEntries(Object.entries(columns).map(([column, tally]) => [column, share(tally, name)])),
      ]),
    ),
  );
}
