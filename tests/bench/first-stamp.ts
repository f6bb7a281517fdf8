import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { openEngines } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { greyOf } from '../../src/photo';
import { closerSide, glanceAt, readStamp, type StampEngines } from '../../src/stamp';
import { nextStep, type Way } from '../../src/ui/panel/photo-steps';

const root = new URL('../../', import.meta.url).pathname;
const demo = join(root, 'tests/market/site/photos');
const committed = join(root, 'tests/photos/stamps');
/** Photos of one listing, of which one shows the stamp. */
const photosOfListing = 12;

interface Taken {
  file: string;
  likelihood: number;
  /** After a second, closer look. */
  closer: number;
  glanceMs: number;
  closerMs: number;
  readMs: number;
}

const jpegs = (folder: string, has: (name: string) => boolean): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.jpg') && has(name))
    .map((name) => join(folder, name));

/** Processor time in milliseconds: the machine's other work does not bend it. */
function spent(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

async function take(file: string, engines: StampEngines): Promise<Taken> {
  const started = spent();
  const photo = await openPhotoFile(file);
  if (!photo.ok) throw new Error(photo.problem.code);
  const opened = spent();
  const openMs = opened - started;
  const likelihood = await glanceAt(greyOf(photo.value.image), engines);
  const glanced = spent();
  const second = await glanceAt(greyOf(photo.value.image), engines, closerSide);
  const looked = spent();
  await readStamp(photo.value.image, file, engines);
  // Each look opens the file anew, as the reader does.
  return {
    file,
    likelihood,
    closer: (likelihood + second) / 2,
    glanceMs: openMs + glanced - opened,
    closerMs: openMs + looked - glanced,
    readMs: openMs + spent() - looked,
  };
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);
const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;
const percent = (share: number): string => `${(share * 100).toFixed(0)} %`;

/** Shares of the whole time until the stamp is read, the stamp on each of the twelve places in turn. */
function sharesOf(stamp: Taken, others: readonly Taken[]): { inOrder: number[]; steps: number; before: number } {
  const reads = sum(others.map(({ readMs }) => readMs)) + stamp.readMs;
  const inOrder = Array.from(
    { length: photosOfListing },
    (_, place) => (sum(others.slice(0, place).map(({ readMs }) => readMs)) + stamp.readMs) / reads,
  );
  return { inOrder, ...byStep([...others, stamp], stamp) };
}

/** The photos taken in the panel's own steps: how much of the whole time the stamp took, and how many were read before. */
function byStep(photos: readonly Taken[], stamp: Taken): { steps: number; before: number } {
  const ways: Way[] = photos.map(() => ({ at: 'here' }));
  let [passed, read, until, before] = [0, 0, 0, 0];
  for (let step = nextStep(ways, 0, 0); 'index' in step; step = nextStep(ways, 0, 0)) {
    const { index } = step;
    const photo = photos[index] as Taken;
    if (step.do === 'glance') {
      passed += photo.glanceMs;
      ways[index] = { at: 'seen', likelihood: photo.likelihood, again: false, closer: false };
    } else if (step.do === 'look-closer') {
      passed += photo.closerMs;
      ways[index] = { at: 'seen', likelihood: photo.closer, again: false, closer: true };
    } else {
      passed += photo.readMs;
      if (photo === stamp) [until, before] = [passed, read];
      read += 1;
      const way = ways[index];
      ways[index] = { at: 'done', closer: way?.at === 'seen' && way.closer };
    }
  }
  return { steps: until / passed, before };
}

/**
 * How soon the stamp of a listing of twelve photos is read, as a share of the time for the whole listing: read in the
 * listing's order, and in the panel's own steps. Only ratios of one run, of processor time; photos are read as the command
 * line reads them.
 */
export async function bench(): Promise<void> {
  const { engines, close } = await openEngines();
  const without = jpegs(demo, (name) => !name.includes('-stamp'));
  // The first reading still compiles.
  await take(without[0] ?? '', engines);
  const others: Taken[] = [];
  for (const file of without) others.push(await take(file, engines));
  const sets: [string, string[]][] = [
    ['demo stamps', jpegs(demo, (name) => name.includes('-stamp'))],
    ...['clear', 'fair', 'hard'].map((name): [string, string[]] => [
      `${name} photographs`,
      jpegs(committed, (file) => file.startsWith(name)),
    ]),
  ];
  const rows: Record<string, string>[] = [];
  for (const [name, files] of sets) {
    const shares: ReturnType<typeof sharesOf>[] = [];
    for (const [index, file] of files.entries()) {
      const stamp = await take(file, engines);
      const from = (index * 7) % others.length;
      const beside = [...others, ...others].slice(from, from + photosOfListing - 1);
      shares.push(sharesOf(stamp, beside));
    }
    rows.push({
      'the stamp among eleven photos without one': `${name}, ${files.length}`,
      'in order, stamp last': percent(median(shares.map(({ inOrder }) => inOrder.at(-1) ?? 1))),
      'in order, any place': percent(median(shares.flatMap(({ inOrder }) => inOrder))),
      'likeliest first': percent(median(shares.map(({ steps }) => steps))),
      'its mean': percent(sum(shares.map(({ steps }) => steps)) / shares.length),
      'worst of the set': percent(Math.max(...shares.map(({ steps }) => steps))),
      'read first': `${shares.filter(({ before }) => before === 0).length} of ${files.length}`,
    });
  }
  await close();
  console.log('share of the whole time of a listing of twelve photos until the stamp is read; medians of one run');
  console.table(rows);
  const all = sum(others.map(({ glanceMs }) => glanceMs)) / sum(others.map(({ readMs }) => readMs));
  console.log(`a glance takes ${percent(all)} of a reading's time`);
}
