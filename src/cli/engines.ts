import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { type OnnxRuntime, openNets, openTesseract, printWhenNeeded, type StampEngines } from '../stamp';

/** The recognisers as they run without a browser; `close` ends their workers. */
export interface OpenEngines {
  engines: StampEngines;
  close(): Promise<void>;
}

const find = createRequire(import.meta.url);
const models = new URL('../../public/models/', import.meta.url);

/** The same nets, run-time and print files as the extension packs. What does not start is said on stderr. */
export async function openEngines(): Promise<OpenEngines> {
  const english = dirname(find.resolve('@tesseract.js-data/eng/package.json'));
  const print = printWhenNeeded(
    () => openTesseract({ langPath: join(english, '4.0.0_best_int') }),
    (error) => console.error(`The print reader did not start: ${error instanceof Error ? error.message : error}`),
  );
  const close = () => print.close();
  const runtime = await import('onnxruntime-web/wasm');
  runtime.env.wasm.numThreads = 1;
  runtime.env.logLevel = 'error';
  const nets = await openNets(runtime as unknown as OnnxRuntime, {
    card: readFileSync(new URL('model-card.json', models), 'utf8'),
    read: (name) => readFile(new URL(name, models)),
  });
  if (nets.ok) return { engines: { print, net: nets.value }, close };
  console.error(`${nets.problem.what} ${nets.problem.remedy}`);
  return { engines: { print }, close };
}
