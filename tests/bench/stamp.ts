import { existsSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { openEngines } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { builtInMakers } from '../../src/maker';
import { readStamp, type StampEngines } from '../../src/stamp';
import { generalRecogniser } from './stamp/general-recogniser';
import { bare, type Judged, judge, reliability, share } from './stamp/judge';
import { plateReaders, plateTable } from './stamp/plates';
import { type BenchPhoto, type Difficulty, renderedPhotos } from './stamp/rendered';

/** Photographs of each difficulty from the second renderer; drawing one takes about two seconds the first time. */
const each = Number(process.env.STAMP_BENCH_EACH ?? 24);
/** Readings are judged as of this day, so that a run can be repeated. */
const now = '2026-11-25';
/** What the print fallback's lines must reach to be taken for a stamp. */
const leastStampScore = 0.5;

const root = new URL('../../', import.meta.url).pathname;

/** The committed validation photographs, rendered by the training's renderer with fonts and seeds of their own. */
function validationPhotos(): BenchPhoto[] {
  const folder = join(root, 'tests/bench/stamp/photos');
  const list = join(folder, 'expected.json');
  if (!existsSync(list)) return [];
  const expected = JSON.parse(readFileSync(list, 'utf8')) as {
    file: string;
    difficulty: Difficulty;
    code: string | null;
  }[];
  return expected.map(({ file, difficulty, code }) => ({ path: join(folder, file), difficulty, code }));
}

/** Every photograph of the demo marketplace: nine stamps, of which one is beyond reading, and views without any. */
async function demoPhotos(): Promise<BenchPhoto[]> {
  const { photoSpecs } = await import('../market/photo-specs');
  return photoSpecs.map(({ file, subject }) => {
    const lines = subject.kind === 'stamp' ? subject.stamp.lines : [];
    const code = lines.map(({ text }) => text).find((text) => /\d/.test(text)) ?? null;
    const difficulty: Difficulty = code === null ? 'no code' : file.startsWith('l9') ? 'hard' : 'clear';
    return { path: join(root, 'tests/market/site/photos', file), difficulty, code };
  });
}

interface Run {
  judged: { photo: BenchPhoto; result: Judged }[];
  milliseconds: number[];
  /** Processor time of all threads: what a photo costs whatever else the machine does. */
  cpuMilliseconds: number[];
}

async function readAll(photos: readonly BenchPhoto[], engines: StampEngines): Promise<Run> {
  const run: Run = { judged: [], milliseconds: [], cpuMilliseconds: [] };
  const least = engines.net?.acceptance.stampScore ?? leastStampScore;
  for (const photo of photos) {
    const opened = await openPhotoFile(photo.path);
    if (!opened.ok) throw new Error(`${photo.path}: ${opened.problem.what}`);
    const start = performance.now();
    const before = process.cpuUsage();
    const read = await readStamp(opened.value.image, 'p1', engines);
    run.milliseconds.push(performance.now() - start);
    const spent = process.cpuUsage(before);
    run.cpuMilliseconds.push((spent.user + spent.system) / 1000);
    run.judged.push({ photo, result: judge(read, photo.code, least, builtInMakers, now) });
  }
  return run;
}

function rates(name: string, { judged }: Run, way: 'withSystems' | 'free'): Record<string, string> {
  const of = (difficulty: Difficulty) => judged.filter(({ photo }) => photo.difficulty === difficulty);
  const exact = (difficulty: Difficulty): string => {
    const photos = of(difficulty);
    const right = photos.filter(({ photo, result }) => bare(result[way].text) === bare(photo.code ?? ''));
    return photos.length === 0 ? '–' : `${share(right.length, photos.length)} of ${photos.length}`;
  };
  const coded = judged.filter(({ photo }) => photo.code !== null);
  const wrong = coded.filter(
    ({ photo, result }) => result[way].accepted && bare(result[way].text) !== bare(photo.code ?? ''),
  );
  const accepted = coded.filter(({ result }) => result[way].accepted).length;
  const empty = of('no code').filter(({ result }) => result[way].accepted).length;
  return {
    'from the whole photo': `${name}, ${way === 'free' ? 'free' : 'with code systems'}`,
    clear: exact('clear'),
    fair: exact('fair'),
    hard: exact('hard'),
    accepted: share(accepted, coded.length),
    'wrong but accepted': share(wrong.length, coded.length),
    'no code: accepted': share(empty, of('no code').length),
  };
}

/** What the likeliest reading said of itself, and whether it was right. */
const saidOf = ({ judged }: Run): { probability: number; right: boolean }[] =>
  judged
    .filter(({ result }) => result.withSystems.text !== '')
    .map(({ photo, result }) => ({
      probability: result.withSystems.probability,
      right: bare(result.withSystems.text) === bare(photo.code ?? ''),
    }));

/** Photographs whose accepted reading is wrong, one line each: what must not happen. */
const missesOf = ({ judged }: Run): string[] =>
  judged
    .filter(
      ({ photo, result }) => result.withSystems.accepted && bare(result.withSystems.text) !== bare(photo.code ?? ''),
    )
    .map(
      ({ photo, result }) =>
        `wrong but accepted: ${basename(photo.path)} is ${photo.code}, read ${result.withSystems.text}`,
    );

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** Exact codes from whole photos by nets and by the print fallback, calibration, real plates, and speed. */
export async function bench(): Promise<void> {
  const { engines, close } = await openEngines();
  const ways: { name: string; engines: StampEngines }[] = [
    ...(engines.net === undefined ? [] : [{ name: 'nets', engines }]),
    { name: 'tesseract.js', engines: { print: engines.print } },
  ];
  const sets: { name: string; photos: BenchPhoto[] }[] = [
    { name: 'validation set', photos: validationPhotos() },
    { name: `second renderer, ${each} of each`, photos: await renderedPhotos(join(root, '.cache/bench-stamp'), each) },
    { name: 'demo marketplace', photos: await demoPhotos() },
  ];
  try {
    const speeds: Record<string, string>[] = [];
    const said: { probability: number; right: boolean }[] = [];
    for (const way of ways) {
      const rows: Record<string, string>[] = [];
      for (const { name, photos } of sets) {
        if (photos.length === 0) {
          console.log(`${name}: not there yet`);
          continue;
        }
        // The print fallback takes seconds on grained leather: of the demo set it reads the stamps only.
        const isSlow = way.engines.net === undefined && name === 'demo marketplace';
        const run = await readAll(isSlow ? photos.filter(({ code }) => code !== null) : photos, way.engines);
        rows.push(rates(name, run, 'withSystems'), rates(name, run, 'free'));
        speeds.push({
          set: name,
          reader: way.name,
          'ms a photo, median': median(run.milliseconds).toFixed(0),
          'processor ms, median': median(run.cpuMilliseconds).toFixed(0),
        });
        if (way === ways[0]) said.push(...saidOf(run));
        for (const miss of missesOf(run)) console.log(`  ${way.name}, ${miss}`);
      }
      console.log(`\n${way.name}: exact codes from the whole photo`);
      console.table(rows);
    }
    const { error, bins } = reliability(said);
    console.log(
      `\nreliability of ${ways[0]?.name}, with code systems: expected calibration error ${(error * 100).toFixed(1)}%`,
    );
    console.table(bins);
    const general = await generalRecogniser();
    const plates = await plateTable([...plateReaders(engines), ...(general === null ? [] : [general])]);
    console.log('\nreal number plates, inside the plate’s box');
    if (plates === null) console.log('skipped: not present');
    else console.table(plates);
    console.log('\nspeed in this process, with everything loaded; starting and memory: npm run bench -- stamp-speed');
    console.table(speeds);
  } finally {
    await close();
  }
}
