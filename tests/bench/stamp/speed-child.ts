import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { OnnxRuntime, StampEngines } from '../../../src/stamp';

/*
 * One fresh process that starts one recogniser and reads photos with it, one after the other, and nothing else: no
 * JPEG decoder, no code systems. Arguments: 'nets' or 'tesseract.js', the nets' folder, then files of plain pixels
 * (RGBA, as wide and high as the environment says). Prints what it measured as one line of JSON.
 */

/** What one process took: milliseconds, and megabytes of resident memory. */
export interface Taken {
  /** From asking for the recogniser's code until it can read. */
  readyMs: number;
  /** Processor time of the same, all threads: what it takes whatever else the machine does. */
  readyProcessorMs: number;
  /** Of each photo; the first one still compiles. */
  photoMs: number[];
  /** Of each photo, processor time of all threads. */
  photoProcessorMs: number[];
  /** Before anything was loaded, and the highest of all. */
  baselineMb: number;
  peakMb: number;
}

/** Linux's own figures of this process; `VmHWM` is the highest resident memory so far. */
const memory = (name: 'VmHWM' | 'VmRSS'): number =>
  Number(new RegExp(`${name}:\\s+(\\d+)`).exec(readFileSync('/proc/self/status', 'utf8'))?.[1]) / 1024;

async function open(which: string, models: string): Promise<StampEngines> {
  const { loadNets, openTesseract, stampNets } = await import('../../../src/stamp');
  if (which === 'tesseract.js') {
    const english = dirname(createRequire(import.meta.url).resolve('@tesseract.js-data/eng/package.json'));
    return { print: await openTesseract({ langPath: join(english, '4.0.0_best_int') }) };
  }
  const runtime = await import('onnxruntime-web/wasm');
  runtime.env.wasm.numThreads = 1;
  const nets = await loadNets(runtime as unknown as OnnxRuntime, {
    card: readFileSync(join(models, 'model-card.json'), 'utf8'),
    read: (name) => readFile(join(models, name)),
  });
  if (!nets.ok) throw new Error(nets.problem.code);
  const { card, finder, recogniser } = nets.value;
  return { print: null, net: stampNets(card, finder, recogniser) };
}

const [which = 'nets', models = '', ...files] = process.argv.slice(2);
const [width, height] = [Number(process.env.PHOTO_WIDTH), Number(process.env.PHOTO_HEIGHT)];
const taken: Taken = {
  readyMs: 0,
  readyProcessorMs: 0,
  photoMs: [],
  photoProcessorMs: [],
  baselineMb: memory('VmRSS'),
  peakMb: 0,
};
const processorMs = (since?: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
};
const started = performance.now();
const startedProcessor = process.cpuUsage();
const engines = await open(which, models);
taken.readyMs = performance.now() - started;
taken.readyProcessorMs = processorMs(startedProcessor);
const { readStamp } = await import('../../../src/stamp');
for (const file of files) {
  const bytes = readFileSync(file);
  const data = new Uint8ClampedArray(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const from = performance.now();
  const before = process.cpuUsage();
  const read = await readStamp({ width, height, data }, file, engines);
  if (read.state === 'unread') throw new Error(read.problem.code);
  taken.photoMs.push(performance.now() - from);
  taken.photoProcessorMs.push(processorMs(before));
}
taken.peakMb = memory('VmHWM');
process.stdout.write(`${JSON.stringify(taken)}\n`, () => process.exit(0));
