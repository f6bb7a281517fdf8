import { languageFile } from './language-file';
import { restored } from './restored';

interface PrintWorker {
  fetch: typeof fetch;
  importScripts(...files: string[]): void;
}
type Bytes = Uint8Array<ArrayBuffer>;
/** Reads a file that lies beside the one that is made. */
type Beside = (name: string) => Promise<Bytes>;

/** Of the print engine's two builds, which share nearly all of their bytes, the package holds one whole. */
const [withSimd, withoutSimd] = ['tesseract-core-simd-lstm', 'tesseract-core-lstm'];

/** Files that the package holds in a smaller form: what each is, and what it is made of. */
const made: Record<string, { type: string; of: (beside: Beside) => Promise<Bytes> }> = {
  [`${withoutSimd}.wasm`]: {
    type: 'application/wasm',
    of: async (beside) => {
      const [base, delta] = await Promise.all([beside(`${withSimd}.wasm`), beside(`${withoutSimd}.wasm.delta`)]);
      return restored(base, delta);
    },
  },
  'eng.traineddata': {
    type: 'application/octet-stream',
    of: async (beside) => languageFile(await beside('eng.traineddata.packed')),
  },
};

/**
 * Runs in the print engine's worker in place of its build with or without SIMD: starts that build, and makes what the
 * package holds in a smaller form when the engine asks for it.
 */
export function startPrint(worker: PrintWorker, hasSimd: boolean): void {
  const fetchFile = worker.fetch.bind(worker);
  worker.fetch = async (file, options) => {
    const address = String(file);
    const wanted = made[address.slice(address.lastIndexOf('/') + 1)];
    if (wanted === undefined) return fetchFile(file, options);
    const bytes = await wanted.of(
      async (name) => new Uint8Array(await (await fetchFile(new URL(name, address), options)).arrayBuffer()),
    );
    return new Response(bytes, { headers: { 'Content-Type': wanted.type } });
  };
  worker.importScripts(`${hasSimd ? withSimd : withoutSimd}.js`);
}
