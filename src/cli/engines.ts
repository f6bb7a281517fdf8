import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Result } from '../problem';
import {
  type LoadedNets,
  loadNets,
  type OnnxRuntime,
  openTesseract,
  printWhenNeeded,
  type StampEngines,
  stampNets,
} from '../stamp';
import { problemWords } from './check-report';

/** The recognisers as they run without a browser; `close` ends their workers. */
export interface OpenEngines {
  engines: StampEngines;
  close(): Promise<void>;
}

const find = createRequire(import.meta.url);
const models = new URL('../../public/models/', import.meta.url);

/** The nets as the extension packs them, in plain WASM on one thread. */
export async function loadShippedNets(): Promise<Result<LoadedNets>> {
  const runtime = await import('onnxruntime-web/wasm');
  runtime.env.wasm.numThreads = 1;
  runtime.env.logLevel = 'error';
  return loadNets(runtime as unknown as OnnxRuntime, {
    card: readFileSync(new URL('model-card.json', models), 'utf8'),
    read: (name) => readFile(new URL(name, models)),
  });
}

/** The same nets, run-time and print files as the extension packs. What does not start is said on stderr. */
export async function openEngines(): Promise<OpenEngines> {
  const english = dirname(find.resolve('@tesseract.js-data/eng/package.json'));
  const print = printWhenNeeded(
    () => openTesseract({ langPath: join(english, '4.0.0_best_int') }),
    (error) => console.error(`The print reader did not start: ${error instanceof Error ? error.message : error}`),
  );
  const close = () => print.close();
  const nets = await loadShippedNets();
  if (nets.ok) {
    const { card, finder, recogniser } = nets.value;
    return { engines: { print, net: stampNets(card, finder, recogniser) }, close };
  }
  console.error(problemWords(nets.problem));
  return { engines: { print }, close };
}
