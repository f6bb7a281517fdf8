import { expect, it } from 'vitest';
import { deltaOf } from '../../../src/packaging/delta';
import { startWithoutSimd } from '../../../src/reader/print-without-simd';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const ocr = 'chrome-extension://tellstamp/ocr/';

it('gives the engine that is started its WASM, made of the other build, and every other file as it is', async () => {
  const [base, whole] = [bytesOf('the build with vectors, and much else'), bytesOf('the build, and much else')];
  const files: Record<string, Uint8Array<ArrayBuffer>> = {
    [`${ocr}tesseract-core-simd-lstm.wasm`]: base,
    [`${ocr}tesseract-core-lstm.wasm.delta`]: new Uint8Array(deltaOf(whole, base)),
    [`${ocr}eng.traineddata`]: bytesOf('letters'),
  };
  const started: string[] = [];
  const worker = {
    fetch: async (file: RequestInfo | URL) => new Response(files[String(file)]),
    importScripts: (...names: string[]) => void started.push(...names),
  };
  startWithoutSimd(worker);
  expect(started).toEqual(['tesseract-core-lstm.js']);
  const answer = await worker.fetch(`${ocr}tesseract-core-lstm.wasm`);
  expect(answer.headers.get('Content-Type')).toBe('application/wasm');
  expect(await answer.text()).toBe('the build, and much else');
  expect(await (await worker.fetch(`${ocr}eng.traineddata`)).text()).toBe('letters');
});
