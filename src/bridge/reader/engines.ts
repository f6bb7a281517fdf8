import {
  type OnnxRuntime,
  openNets,
  openTesseract,
  printWhenNeeded,
  type StampEngines,
  type StampNets,
} from '../../stamp';

/**
 * Starts the recognisers from the extension's own files; `files` is its address with a slash at the end. What cannot
 * start (no WASM SIMD) is left out: without the nets the print recogniser reads stamps, without both no photo is read.
 */
export async function openEngines(files: string): Promise<StampEngines> {
  const print = printWhenNeeded(
    () =>
      openTesseract({
        langPath: `${files}ocr`,
        workerPath: `${files}ocr/worker.min.js`,
        corePath: `${files}ocr/tesseract-core-simd-lstm.wasm.js`,
      }),
    (error) => console.error('[tellstamp] the print recogniser did not start', error),
  );
  const net = await openStampNets(files);
  return net === null ? { print } : { print, net };
}

async function openStampNets(files: string): Promise<StampNets | null> {
  try {
    const card = await fetch(`${files}models/model-card.json`);
    const runtime = await import('onnxruntime-web/wasm');
    runtime.env.wasm.numThreads = 1;
    runtime.env.wasm.wasmPaths = `${files}ort/`;
    const nets = await openNets(runtime as unknown as OnnxRuntime, {
      card: await card.text(),
      read: async (name) => new Uint8Array(await (await fetch(`${files}models/${name}`)).arrayBuffer()),
    });
    if (nets.ok) return nets.value;
    console.error(`[tellstamp] ${nets.problem.what}`);
  } catch (error) {
    console.error('[tellstamp] the stamp nets did not start', error);
  }
  return null;
}
