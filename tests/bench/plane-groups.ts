import { grades } from '../measure/photographed';
import { printTallies } from '../measure/print-tallies';
import type { Tally } from '../measure/tally';
import { tallyGroups } from '../measure/tally-groups';

/** Drawings of each group and way it lies; the committed figures say how many they were taken on. */
const scenes = Number(process.env.MEASURE_SCENES ?? 3);
/** Seeds are opened once; the first of each set is told. */
const first = Number(process.env.MEASURE_FIRST ?? 1);

/** The 17 plane groups, drawn and photographed: what the pattern's measures say of each. */
export async function bench(): Promise<void> {
  const columns: Record<string, Tally> = {};
  for (const grade of grades) {
    const tally: Tally = new Map();
    for (let seed = first; seed < first + scenes; seed++) await tallyGroups(tally, grade, seed);
    columns[grade] = tally;
  }
  printTallies(columns);
}
