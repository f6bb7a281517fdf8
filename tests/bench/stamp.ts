import { basename, join } from 'node:path';
import { openEngines } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { builtInMakers } from '../../src/maker';
import { readStamp, type StampEngines } from '../../src/stamp';
import { benchMaker } from './stamp/bench-maker';
import { generalRecogniser } from './stamp/general-recogniser';
import { type Book, judge } from './stamp/judge';
import { plateReaders, plateTable } from './stamp/plates';
import { type BenchPhoto, type Difficulty, renderedPhotos } from './stamp/rendered';
import { type JudgedPhoto, misreadings, missesOf, rates, reliabilityTable } from './stamp/rows';
import { cropReaders, trueCropTable } from './stamp/true-crops';
import { validationPhotos, validationSets } from './stamp/validation';

/** Photographs of each difficulty from the second renderer; drawing one takes about two seconds the first time. */
const each = Number(process.env.STAMP_BENCH_EACH ?? 24);
/** Lists every photograph that was not read right. */
const listsMisreadings = process.env.STAMP_BENCH_MISREAD === '1';
/** Readings are judged as of this day, so that a run can be repeated. */
const now = '2026-11-25';
/** What the print fallback's lines must reach to be taken for a stamp. */
const leastStampScore = 0.5;

const root = new URL('../../', import.meta.url).pathname;

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
  judged: JudgedPhoto[];
  milliseconds: number[];
  /** Processor time of all threads: what a photo costs whatever else the machine does. */
  cpuMilliseconds: number[];
}

async function readAll(photos: readonly BenchPhoto[], engines: StampEngines, book: Book): Promise<Run> {
  const run: Run = { judged: [], milliseconds: [], cpuMilliseconds: [] };
  const least = engines.net?.acceptance.stampScore ?? leastStampScore;
  for (const photo of photos) {
    const opened = await openPhotoFile(photo.path);
    if (!opened.ok) throw new Error(`${photo.path}: ${opened.problem.code}`);
    const start = performance.now();
    const before = process.cpuUsage();
    const read = await readStamp(opened.value.image, 'p1', engines);
    run.milliseconds.push(performance.now() - start);
    const spent = process.cpuUsage(before);
    run.cpuMilliseconds.push((spent.user + spent.system) / 1000);
    run.judged.push({ photo, result: judge(read, photo.code, least, book) });
  }
  return run;
}

/** The two halves of the validation set, each drawn with a seed of its own: how far chance goes. */
const ratesOfParts = (judged: readonly JudgedPhoto[]): Record<string, string>[] =>
  validationSets.flatMap((folder) => {
    const part = judged.filter(({ photo }) => photo.path.startsWith(folder));
    return (['withSystems', 'free'] as const).map((kind) => rates(`of it ${basename(folder)}`, part, kind));
  });

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** Exact codes from whole photos by nets and by the print fallback, calibration, real plates, and speed. */
export async function bench(): Promise<void> {
  const { engines, close } = await openEngines();
  const ways: { name: string; engines: StampEngines }[] = [
    ...(engines.net === undefined ? [] : [{ name: 'nets', engines }]),
    { name: 'tesseract.js', engines: { print: engines.print } },
  ];
  const rendered = await renderedPhotos(join(root, '.cache/bench-stamp'), each);
  const own = benchMaker();
  const builtIn: Book = { makers: builtInMakers, maker: null, now };
  const sets: { name: string; photos: BenchPhoto[]; book: Book }[] = [
    { name: 'validation set', photos: validationPhotos(), book: { makers: [own], maker: own.maker, now } },
    { name: 'second renderer', photos: rendered, book: builtIn },
    { name: 'demo marketplace', photos: await demoPhotos(), book: builtIn },
  ];
  try {
    const speeds: Record<string, string>[] = [];
    const read: { name: string; judged: JudgedPhoto[] }[] = [];
    for (const way of ways) {
      const rows: Record<string, string>[] = [];
      for (const { name, photos, book } of sets) {
        // The print fallback takes seconds on grained leather: of the demo set it reads the stamps only.
        const isSlow = way.engines.net === undefined && name === 'demo marketplace';
        const run = await readAll(isSlow ? photos.filter(({ code }) => code !== null) : photos, way.engines, book);
        const known = book.maker === null ? [] : (['named'] as const);
        for (const kind of ['withSystems', ...known, 'free'] as const) rows.push(rates(name, run.judged, kind));
        if (book.maker !== null) rows.push(...ratesOfParts(run.judged));
        speeds.push({
          set: name,
          reader: way.name,
          'ms a photo, median': median(run.milliseconds).toFixed(0),
          'processor ms, median': median(run.cpuMilliseconds).toFixed(0),
        });
        if (way === ways[0]) read.push({ name, judged: run.judged });
        for (const miss of missesOf(run.judged)) console.log(`  ${way.name}, ${miss}`);
        if (listsMisreadings) for (const miss of misreadings(run.judged)) console.log(`  ${way.name}, ${miss}`);
      }
      console.log(`\n${way.name}: exact codes from the whole photo`);
      console.table(rows);
    }
    const { errors, bins } = reliabilityTable(read);
    console.log(`\nreliability of ${ways[0]?.name}, with code systems`);
    console.table(errors);
    console.table(bins);
    const general = await generalRecogniser();
    console.log('\nvalidation set, readers told where the code is');
    console.table(await trueCropTable(validationPhotos(), cropReaders(engines, general)));
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
