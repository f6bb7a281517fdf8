import { describe, expect, it } from 'vitest';
import { deltaOf } from '../../../src/packaging/delta';
import { packedLanguage } from '../../../src/packaging/word-list';
import { startPrint } from '../../../src/reader/print-core';
import { languageOf } from '../packaging/language-of';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const ocr = 'chrome-extension://tellstamp/ocr/';
const [base, whole] = [bytesOf('the build with vectors, and much else'), bytesOf('the build, and much else')];
const language = languageOf([{ letter: 3, flags: 1, leadsTo: 0 }]);

describe.each([true, false])('the print engine’s worker, where WASM has SIMD: %s', (hasSimd) => {
  const files: Record<string, Uint8Array> = {
    [`${ocr}tesseract-core-simd-lstm.wasm`]: base,
    [`${ocr}tesseract-core-lstm.wasm.delta`]: deltaOf(whole, base),
    [`${ocr}eng.traineddata.packed`]: packedLanguage(language),
    [`${ocr}other`]: bytesOf('letters'),
  };
  const started: string[] = [];
  const worker = {
    fetch: async (file: RequestInfo | URL) => new Response(new Uint8Array(files[String(file)]!)),
    importScripts: (...names: string[]) => void started.push(...names),
  };
  startPrint(worker, hasSimd);
  const read = async (name: string) => (await worker.fetch(`${ocr}${name}`)).text();

  it('starts that build', () => {
    expect(started).toEqual([hasSimd ? 'tesseract-core-simd-lstm.js' : 'tesseract-core-lstm.js']);
  });

  it('makes the WASM without SIMD of the other build', async () => {
    const answer = await worker.fetch(`${ocr}tesseract-core-lstm.wasm`);
    expect(answer.headers.get('Content-Type')).toBe('application/wasm');
    expect(await answer.text()).toBe('the build, and much else');
  });

  it('makes the language file of its packed form, and gives every other file as it is', async () => {
    const made = await (await worker.fetch(`${ocr}eng.traineddata`)).arrayBuffer();
    expect(new Uint8Array(made)).toEqual(language);
    expect(await read('tesseract-core-simd-lstm.wasm')).toBe('the build with vectors, and much else');
    expect(await read('other')).toBe('letters');
  });
});
