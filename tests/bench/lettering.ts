import { letteringScene, secondLetteringScene } from '../measure/lettering-truth';
import { grades } from '../measure/photographed';
import { printTallies } from '../measure/print-tallies';
import type { Tally } from '../measure/tally';
import { tallyLettering } from '../measure/tally-lettering';

const scenes = Number(process.env.MEASURE_SCENES ?? 20);
/** `seen`: the renderer that limits were tuned on; `second`: the other. */
const parts = (process.env.MEASURE_PART ?? 'seen,second').split(',');
const first = Number(process.env.MEASURE_FIRST ?? 1);

/** Lines of characters whose widths, gaps and strokes are known. */
export async function bench(): Promise<void> {
  for (const part of parts) {
    const columns: Record<string, Tally> = {};
    for (const grade of grades) {
      const tally: Tally = new Map();
      for (let seed = first; seed < first + scenes; seed++)
        await tallyLettering(tally, part === 'second' ? secondLetteringScene : letteringScene, grade, seed);
      columns[grade] = tally;
    }
    console.log(`\n${part}`);
    printTallies(columns);
  }
}
