import { restored } from './restored';

/** Of the print engine's two builds, which share nearly all of their bytes, the package holds one whole. */
const whole = 'tesseract-core-simd-lstm.wasm';
const wanted = 'tesseract-core-lstm.wasm';

/**
 * Runs in the print engine's worker in place of its build without SIMD: makes that build's WASM when the engine asks for
 * it, and starts the engine.
 */
export function startWithoutSimd(worker: { fetch: typeof fetch; importScripts(...files: string[]): void }): void {
  const fetchFile = worker.fetch.bind(worker);
  worker.fetch = async (file, options) => {
    const address = String(file);
    if (!address.endsWith(`/${wanted}`)) return fetchFile(file, options);
    const bytesOf = async (name: string) =>
      new Uint8Array(await (await fetchFile(new URL(name, address), options)).arrayBuffer());
    const [base, delta] = await Promise.all([bytesOf(whole), bytesOf(`${wanted}.delta`)]);
    return new Response(restored(base, delta), { headers: { 'Content-Type': 'application/wasm' } });
  };
  worker.importScripts('tesseract-core-lstm.js');
}
