/** Neighbours of a row in runs: each goes on with the one before it, or begins a run of its own. */
export function runsOf<T>(row: readonly T[], goesOn: (before: T, one: T) => boolean): T[][] {
  const runs: T[][] = [];
  for (const one of row) {
    const run = runs.at(-1);
    const before = run?.at(-1);
    if (run && before && goesOn(before, one)) run.push(one);
    else runs.push([one]);
  }
  return runs;
}
