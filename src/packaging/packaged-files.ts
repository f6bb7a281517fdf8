import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { deltaOf } from './delta';
import { thirdPartyFile } from './licence-file';
import { packedLanguage } from './word-list';

const root = resolve(import.meta.dirname, '../..');
export const fromPackage = (path: string): string => resolve(root, 'node_modules', path);

/**
 * The recognisers, packaged with the extension because Manifest V3 forbids code from elsewhere. They come from
 * node_modules at every build and are not committed a second time.
 */
const packagedFiles = [
  ['ocr/worker.min.js', 'tesseract.js/dist/worker.min.js'],
  // With its WASM beside it: inside the script, as base64, it is in memory four times over while it starts.
  ['ocr/tesseract-core-simd-lstm.js', 'tesseract.js-core/tesseract-core-simd-lstm.js'],
  ['ocr/tesseract-core-simd-lstm.wasm', 'tesseract.js-core/tesseract-core-simd-lstm.wasm'],
  // Where a processor or a setting leaves WASM without SIMD, the nets do not run and this one reads stamps too; its WASM is
  // made of the other one's.
  ['ocr/tesseract-core-lstm.js', 'tesseract.js-core/tesseract-core-lstm.js'],
  ['ort/ort-wasm-simd-threaded.mjs', 'onnxruntime-web/dist/ort-wasm-simd-threaded.mjs'],
  ['ort/ort-wasm-simd-threaded.wasm', 'onnxruntime-web/dist/ort-wasm-simd-threaded.wasm'],
  // Of the builds that know WebGPU this is the smallest (16.8 MB; those that do not suspend WASM have 27 and 28 MB).
  ['ort/ort-wasm-simd-threaded.jspi.mjs', 'onnxruntime-web/dist/ort-wasm-simd-threaded.jspi.mjs'],
  ['ort/ort-wasm-simd-threaded.jspi.wasm', 'onnxruntime-web/dist/ort-wasm-simd-threaded.jspi.wasm'],
  // LGPL: files of their own, with its text beside them, that anyone can put another build of it in the place of.
  ['heif/libheif.mjs', 'libheif-js/libheif-wasm/libheif.js'],
  ['heif/libheif.wasm', 'libheif-js/libheif-wasm/libheif.wasm'],
  ['heif/LICENSE.txt', 'libheif-js/libheif-wasm/LICENSE'],
] as const;

const englishFile = '@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz';

/**
 * What is changed in a file that comes ready made: addresses of a content network, where it looks only when it is told of
 * no files of ours, pointers to files that are not packaged, what is kept and not needed, and how libheif is handed out, as
 * a worker's modules take it.
 * A word that is no longer found stops the build.
 */
const changes: Record<string, readonly (readonly [string, string])[]> = {
  'ocr/worker.min.js': [
    ['https://cdn.jsdelivr.net/npm/@tesseract.js-data/', ''],
    ['https://cdn.jsdelivr.net/npm/tesseract.js-core@v', ''],
    ['worker.min.js.LICENSE.txt', thirdPartyFile],
    ['//# sourceMappingURL=worker.min.js.map', ''],
    // The language file is copied into the engine's own files, and would stay fetched beside it: 5 MB, just when memory is at its most.
    ['.concat(i,".traineddata"),a)}', '.concat(i,".traineddata"),a);a.buffer.transfer?.(0)}'],
  ],
  'heif/libheif.mjs': [
    [
      'typeof exports=="object"&&typeof module=="object"?module.exports=libheif:typeof define=="function"&&define.amd&&define([],()=>libheif);',
      'export{libheif as default};',
    ],
  ],
};

/** A file of the package: copied from where it lies, or with contents of its own. */
export type PackagedFile = { relativeDest: string; absoluteSrc: string } | { relativeDest: string; contents: string };

/** Files that travel beside the bundles, and the packages' files that they are made of. */
export function packagedFilesOf(): { files: PackagedFile[]; sources: string[] } {
  // The net runtime is 14 MB: it travels only with nets to run.
  const wanted = packagedFiles.filter(([to]) => !to.startsWith('ort/') || netsAreThere());
  const files = wanted.map(([relativeDest, from]): PackagedFile => {
    const absoluteSrc = fromPackage(from);
    const replaced = changes[relativeDest];
    return replaced
      ? { relativeDest, contents: changed(readFileSync(absoluteSrc, 'utf8'), replaced, from) }
      : { relativeDest, absoluteSrc };
  });
  const english = 'eng.traineddata.packed';
  files.push({ relativeDest: `ocr/${english}`, absoluteSrc: kept(english, packedLanguage(unpackedEnglish())) });
  const { delta, bytes } = withoutSimd();
  files.push({ relativeDest: `ocr/${delta}`, absoluteSrc: kept(delta, bytes) });
  return { files, sources: [...wanted.map(([, from]) => fromPackage(from)), fromPackage(englishFile)] };
}

/** A text with each word replaced; throws where one is not there, so that a new version is looked at. */
export function changed(text: string, replaced: readonly (readonly [string, string])[], where: string): string {
  return replaced.reduce((sofar, [word, by]) => {
    if (!sofar.includes(word)) throw new Error(`${where} no longer holds "${word}": look at what has become of it`);
    return sofar.replaceAll(word, by);
  }, text);
}

/**
 * The print engine's language file, unpacked: its worker's own unpacking takes 13 MB, just when its WASM starts as well. A
 * packed extension is as small, for its archive packs the file again, and smaller with the word list in a form of ours.
 */
export const unpackedEnglish = (): Uint8Array => gunzipSync(readFileSync(fromPackage(englishFile)));

/** The engine's WASM without SIMD, as what it has beside the one with it: a thirtieth of it. */
function withoutSimd(): { delta: string; bytes: Uint8Array } {
  const core = (name: string) => readFileSync(fromPackage(`tesseract.js-core/${name}`));
  const name = 'tesseract-core-lstm.wasm';
  return { delta: `${name}.delta`, bytes: deltaOf(core(name), core('tesseract-core-simd-lstm.wasm')) };
}

/** A file of the build's own making, where the package is gathered from. */
function kept(name: string, bytes: Uint8Array): string {
  const to = resolve(root, '.cache/packaged', name);
  mkdirSync(dirname(to), { recursive: true });
  writeFileSync(to, bytes);
  return to;
}

function netsAreThere(): boolean {
  const models = resolve(root, 'public/models');
  return existsSync(models) && readdirSync(models).some((file) => file.endsWith('.onnx'));
}
