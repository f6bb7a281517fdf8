import { existsSync, readdirSync } from 'node:fs';
import { openPhotoFile } from '../../src/cli/photo-file';
import { measureMarks, type Point } from '../../src/photo';
import { panelScene } from '../measure/panel-truth';
import { grades } from '../measure/photographed';
import { printTallies } from '../measure/print-tallies';
import { chance } from '../measure/random';
import { secondPanelScene } from '../measure/second/panels';
import { secondStitchScene } from '../measure/second/stitches';
import { stitchScene } from '../measure/stitch-truth';
import {
  count,
  lampNames,
  type Tally,
  tallyChange,
  tallyColour,
  tallyPanel,
  tallySkipped,
  tallyStitches,
} from '../measure/tally';

/** Photographs of each kind; the committed figures say how many they were taken on. */
const scenes = Number(process.env.MEASURE_SCENES ?? 30);
/**
 * `seen`: first renderer, seeds that limits were tuned on. `aside`: the same, seeds opened once. `second`: the renderer that
 * nothing was tuned on. `colours`: patches under lamps. `plates`: photographs without stitches.
 */
const parts = (process.env.MEASURE_PART ?? 'seen,aside,second,colours,plates').split(',');
/** Seeds are opened once; the first of each set is told. */
const first = Number(process.env.MEASURE_FIRST ?? 1);
const seedsOf = (part: string): number[] =>
  Array.from({ length: scenes }, (_, at) => 3 * (at + first) + { seen: 0, aside: 1, second: 2 }[part as 'seen']);

/** Rendered photographs whose truth is known; nothing is read of them but pixels and marks. */
export async function bench(): Promise<void> {
  for (const part of parts.filter((part) => part === 'seen' || part === 'aside' || part === 'second')) {
    const [stitches, panel] = part === 'second' ? [secondStitchScene, secondPanelScene] : [stitchScene, panelScene];
    const columns: Record<string, Tally> = {};
    for (const grade of grades) {
      const tally: Tally = new Map();
      for (const seed of seedsOf(part)) {
        await tallyStitches(tally, stitches, grade, seed);
        await tallySkipped(tally, stitches, grade, seed);
        await tallyPanel(tally, panel, grade, seed);
      }
      columns[grade] = tally;
    }
    console.log(`\n${part}`);
    printTallies(columns);
  }
  if (parts.includes('colours')) colours();
  if (parts.includes('plates')) await plates();
}

function colours(): void {
  const columns: Record<string, Tally> = {};
  for (const lamp of lampNames) {
    const tally: Tally = new Map();
    for (const seed of seedsOf('second')) {
      tallyColour(tally, lamp, seed);
      tallyChange(tally, lamp, seed);
    }
    columns[lamp] = tally;
  }
  printTallies(columns);
}

/** Real photographs without stitches and mostly without a repeat: ten lines and a panel by chance on each number plate. */
async function plates(): Promise<void> {
  const folder = new URL('../../../shared/fixtures/plates/', import.meta.url).pathname;
  if (!existsSync(folder)) return console.log('number plates: skipped: not present');
  const tally: Tally = new Map();
  for (const [at, file] of readdirSync(folder).sort().entries()) {
    const opened = await openPhotoFile(folder + file);
    if (!opened.ok) continue;
    const { image } = opened.value;
    const draw = chance(at + first);
    const place = (least: number, most: number): Point => ({
      x: draw.between(least, most) * image.width,
      y: draw.between(least, most) * image.height,
    });
    for (let line = 0; line < 10; line++) {
      const points = [place(0.1, 0.9), place(0.1, 0.9)];
      const [own] = measureMarks(image, [{ what: 'count', points }]);
      if (own!.why !== 'small') count(tally, 'a count without stitches', own!.value !== null);
    }
    const [a, c] = [place(0.05, 0.3), place(0.6, 0.95)];
    const points = [a, { x: c.x, y: a.y }, c, { x: a.x, y: c.y }];
    for (const what of ['repeat-x', 'mirror-off'] as const) {
      const [own] = measureMarks(image, [{ what, points }]);
      count(tally, `${what} stated`, own!.value !== null);
    }
  }
  printTallies({ plates: tally });
}
