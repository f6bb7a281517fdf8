import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { openTesseract, type StampEngines } from '../stamp';

/** The recognisers as they run without a browser; `close` ends their workers. */
export interface OpenEngines {
  engines: StampEngines;
  close(): Promise<void>;
}

const find = createRequire(import.meta.url);

export async function openEngines(): Promise<OpenEngines> {
  const english = dirname(find.resolve('@tesseract.js-data/eng/package.json'));
  const print = await openTesseract({ langPath: join(english, '4.0.0_best_int') });
  return { engines: { print }, close: () => print.close() };
}
