import { openTesseract, type StampEngines } from '../../stamp';

/**
 * Starts the recognisers from the extension's own files; `files` is its address with a slash at the end. Where
 * the print recogniser cannot start (no WASM SIMD), photos are still looked at and the stage says what it lacks.
 */
export async function openEngines(files: string): Promise<StampEngines> {
  const print = await openTesseract({
    langPath: `${files}ocr`,
    workerPath: `${files}ocr/worker.min.js`,
    corePath: `${files}ocr/tesseract-core-simd-lstm.wasm.js`,
  }).catch((error: unknown) => {
    console.error('[tellstamp] the print recogniser did not start', error);
    return null;
  });
  return { print };
}
