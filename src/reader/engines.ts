import { simd } from 'wasm-feature-detect';
import {
  loadNets,
  type NetFiles,
  netsWithFaster,
  type OnnxRuntime,
  openTesseract,
  printWhenNeeded,
  type StampEngines,
  stampNets,
} from '../stamp';
import { chooseAdapter, type Graphics, openOnAdapter, type WantedAdapter } from './graphics';
import { startedWithin } from './started-within';

/** A print engine that is not there by then, milliseconds, will not be: a slow machine takes some seconds. */
const longestStart = 60_000;

/** Where the nets run; null while there are none. */
export type NetRuntime = 'webgpu' | 'wasm' | null;

export interface OpenEngines {
  engines: StampEngines;
  runtime(): NetRuntime;
}

/**
 * Starts the recognisers from the extension's own files; `files` is its address with a slash at the end. What cannot
 * start is left out: without the nets (no WASM SIMD) the print recogniser reads stamps, in a build that does without SIMD
 * as well; without both no photo is read.
 */
export async function openEngines(files: string, adapter: WantedAdapter = 'real'): Promise<OpenEngines> {
  const print = printWhenNeeded(
    async () =>
      startedWithin(
        longestStart,
        openTesseract({
          langPath: `${files}ocr`,
          unpacked: true,
          workerPath: `${files}ocr/worker.min.js`,
          corePath: `${files}${(await simd()) ? 'print-with-simd' : 'print-without-simd'}.js`,
        }),
      ),
    (error) => console.error('[tellstamp] the print recogniser did not start', error),
  );
  try {
    const nets = await openStampNets(files, adapter);
    return { engines: { print, net: nets.net }, runtime: nets.runtime };
  } catch (error) {
    console.error('[tellstamp] the stamp nets did not start', error);
    return { engines: { print }, runtime: () => null };
  }
}

/** Plain WASM first, so that no photo waits; a graphics card joins when its runtime, three times as large, is loaded. */
async function openStampNets(files: string, wanted: WantedAdapter) {
  const net: NetFiles = {
    card: await (await fetch(`${files}models/model-card.json`)).text(),
    read: async (name) => new Uint8Array(await (await fetch(`${files}models/${name}`)).arrayBuffer()),
  };
  const runtime = await import('onnxruntime-web/wasm');
  const plain = await loadNets(prepared(runtime, files), net);
  if (!plain.ok) throw new Error(JSON.stringify(plain.problem));
  const nets = netsWithFaster(plain.value, openFaster(files, net, wanted), (why) =>
    console.warn(`[tellstamp] the nets run on the processor: ${why}`),
  );
  return {
    net: stampNets(plain.value.card, nets.finder, nets.recogniser),
    runtime: (): NetRuntime => (nets.usesFaster() ? 'webgpu' : 'wasm'),
  };
}

async function openFaster(files: string, net: NetFiles, wanted: WantedAdapter) {
  const adapter = await chooseAdapter(
    { gpu: (navigator as { gpu?: Graphics }).gpu, suspends: 'Suspending' in WebAssembly },
    wanted,
  );
  if (adapter === null) return null;
  const faster = await openOnAdapter(
    adapter,
    async () => prepared(await import('onnxruntime-web/jspi'), files),
    net,
    wanted,
  );
  console.info('[tellstamp] the nets run on the graphics card');
  return faster;
}

function prepared(runtime: typeof import('onnxruntime-web/wasm'), files: string): OnnxRuntime {
  runtime.env.wasm.numThreads = 1;
  runtime.env.wasm.wasmPaths = `${files}ort/`;
  return runtime as unknown as OnnxRuntime;
}
