import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { openPhotoFile } from '../../src/cli/photo-file';
import { type Mark, measureMarks, type PixelImage, type Point } from '../../src/photo';
import { chance } from '../measure/random';
import { type RealPhoto, realPhotos } from '../measure/real/photos';
import { count, type Tally } from '../measure/tally';

/** Where `collect.ts` of tests/measure/real has put them; `MEASURE_REAL_PART`: `seen`, `aside`, or both. */
const folder = process.env.MEASURE_REAL_PHOTOS;
const parts = (process.env.MEASURE_REAL_PART ?? 'seen').split(',');
/** A hand is off by so much, shares of the photo's longer side. */
const hand = 0.015;
const handsOfEach = 5;

/** Measures at marks on photographs of public repositories, whose stitches and repeats were counted by hand beforehand, twice. */
export async function bench(): Promise<void> {
  if (folder === undefined || !existsSync(folder))
    return console.log('real photographs: skipped: MEASURE_REAL_PHOTOS names no folder');
  for (const part of parts) {
    const tally = new Map() as Tally;
    const note = (what: string, holds: boolean) => count(tally, what, holds);
    for (const [at, photo] of realPhotos().entries()) {
      if (photo.aside !== (part === 'aside')) continue;
      const opened = await openPhotoFile(join(folder, photo.file));
      if (!opened.ok) throw new Error(`${photo.file}: ${opened.problem.code}`);
      measureOne(opened.value.image, photo, at, note);
    }
    console.log(`\n${part}\n\n| what | cases | share |\n| --- | --- | --- |`);
    for (const [what, { hits: held, of }] of tally)
      console.log(`| ${what} | ${held} of ${of} | ${((100 * held) / of).toFixed(1)} % |`);
  }
}

function measureOne(
  image: PixelImage,
  { rows, repeats, none, plain }: RealPhoto,
  seed: number,
  note: (what: string, holds: boolean) => void,
): void {
  const draw = chance(seed + 1);
  const reach = hand * Math.max(image.width, image.height);
  const byHand = (points: readonly Point[]) =>
    points.map(({ x, y }) => ({ x: x + draw.between(-reach, reach), y: y + draw.between(-reach, reach) }));
  const measured = (mark: Mark) => measureMarks(image, [mark])[0]?.value ?? null;
  for (const { points, stitches } of rows) {
    const exact = measured({ what: 'count', points });
    note('marks as counted: a count is stated', exact !== null);
    if (exact !== null) note('marks as counted: a stated count is right', exact === stitches);
    for (let times = 0; times < handsOfEach; times++) {
      const snapped = measured({ what: 'count', points: byHand(points), within: reach });
      note('marks by a hand: a count is stated', snapped !== null);
      if (snapped !== null) note('marks by a hand: a stated count is right', snapped === stitches);
    }
  }
  for (const { points, px } of repeats) {
    const exact = measured({ what: 'repeat-x', points });
    note('a repeat is stated', exact !== null);
    if (exact !== null) note('a stated repeat is within 3 %', Math.abs(Number(exact) - px) <= 0.03 * px);
  }
  for (const points of plain)
    note('a panel without a repeat: one is stated', measured({ what: 'repeat-x', points }) !== null);
  for (const points of none)
    note('a line without stitches: a count is stated', measured({ what: 'count', points }) !== null);
}
