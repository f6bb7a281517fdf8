import { execFile } from 'node:child_process';
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { promisify } from 'node:util';
import sharp from 'sharp';
import { build } from 'vite';
import type { Taken } from './speed-child';

const run = promisify(execFile);
const root = new URL('../../../', import.meta.url).pathname;
const folder = join(root, '.cache/bench-speed');

/** A listing: as many photos as the goal says, in the size that it says. */
const listing = { photos: 24, width: 1200, height: 900 };
const starts = 5;
/** The goals for reading on two cores with plain WASM. */
export const goals = { photoMs: 1200, readyMs: 1500, peakMb: 400 };

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[values.length >> 1] ?? 0;

/** The committed photographs in the listing's size, as JPEG files. */
export async function listingPhotos(): Promise<string[]> {
  mkdirSync(folder, { recursive: true });
  const photos = join(root, 'tests/photos/stamps');
  const names = readdirSync(photos).filter((name) => name.endsWith('.jpg'));
  const step = names.length / listing.photos;
  const files: string[] = [];
  for (let number = 0; number < listing.photos; number++) {
    const to = join(folder, `${String(number).padStart(2, '0')}.jpg`);
    const photo = sharp(join(photos, names[Math.floor(number * step)]!));
    await photo.resize(listing.width, listing.height, { fit: 'cover' }).jpeg({ quality: 88 }).toFile(to);
    files.push(to);
  }
  return files;
}

/** The same as plain pixels: whoever reads them needs no decoder in his own memory. */
async function plainPixels(files: readonly string[]): Promise<string[]> {
  return Promise.all(
    files.map(async (file) => {
      const to = file.replace(/jpg$/, 'rgba');
      writeFileSync(to, await sharp(file).ensureAlpha().raw().toBuffer());
      return to;
    }),
  );
}

/** The child as one file of plain JavaScript, as the reader's worker is: a compiler in its memory would be measured. */
async function buildChild(): Promise<string> {
  await build({
    root,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: {
      ssr: 'tests/bench/stamp/speed-child.ts',
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      rolldownOptions: { output: { entryFileNames: 'speed-child.mjs' } },
    },
  });
  return join(folder, 'speed-child.mjs');
}

const size = { PHOTO_WIDTH: String(listing.width), PHOTO_HEIGHT: String(listing.height) };

async function inFreshProcess(child: string, which: string, files: readonly string[]): Promise<Taken> {
  const { stdout } = await run(process.execPath, [child, which, join(root, 'public/models'), ...files], {
    env: { ...process.env, ...size },
    maxBuffer: 1 << 24,
  });
  return JSON.parse(stdout.trim().split('\n').at(-1) ?? '') as Taken;
}

const against = (value: number, other: number): string => `${value.toFixed(0)} (${(value / other).toFixed(2)})`;

/**
 * Nets and tesseract.js, each alone in fresh processes: start, memory and time for a listing. In brackets the ratio
 * to tesseract.js of the same run. Null where the system does not tell a process's memory (`/proc`, Linux).
 */
export async function speedTable(): Promise<Record<string, string>[] | null> {
  if (process.platform !== 'linux') return null;
  const child = await buildChild();
  const files = await plainPixels(await listingPhotos());
  const rows: { reader: string; ready: number; readyProcessor: number; whole: Taken }[] = [];
  for (const reader of ['nets', 'tesseract.js']) {
    const begun: Taken[] = [];
    for (let start = 0; start < starts; start++) begun.push(await inFreshProcess(child, reader, []));
    const ready = median(begun.map(({ readyMs }) => readyMs));
    const readyProcessor = median(begun.map(({ readyProcessorMs }) => readyProcessorMs));
    rows.push({ reader, ready, readyProcessor, whole: await inFreshProcess(child, reader, files) });
  }
  const [, yardstick] = rows;
  return rows.map(({ reader, ready, readyProcessor, whole }) => ({
    reader: `${reader} alone`,
    [`ms to start, median of ${starts}`]: against(ready, yardstick!.ready),
    'processor ms to start': against(readyProcessor, yardstick!.readyProcessor),
    'ms first photo': against(whole.photoMs[0]!, yardstick!.whole.photoMs[0]!),
    'ms a photo, median': against(median(whole.photoMs), median(yardstick!.whole.photoMs)),
    'processor ms, median': against(median(whole.photoProcessorMs), median(yardstick!.whole.photoProcessorMs)),
    'peak memory, MB': against(whole.peakMb, yardstick!.whole.peakMb),
    'of which an empty process, MB': whole.baselineMb.toFixed(0),
  }));
}
