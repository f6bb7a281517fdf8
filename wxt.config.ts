import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { defaultClientConditions } from 'vite';
import { defineConfig } from 'wxt';
import { contentSecurityPolicy, permissions } from './src/bridge/manifest';

const root = import.meta.dirname;
const fromPackage = (path: string) => resolve(root, 'node_modules', path);

/**
 * The recognisers, packaged with the extension because Manifest V3 forbids code from elsewhere. They come from
 * node_modules at every build and are not committed a second time.
 */
const packagedFiles = [
  ['ocr/worker.min.js', 'tesseract.js/dist/worker.min.js'],
  // With its WASM beside it: inside the script, as base64, it is in memory four times over while it starts.
  ['ocr/tesseract-core-simd-lstm.js', 'tesseract.js-core/tesseract-core-simd-lstm.js'],
  ['ocr/tesseract-core-simd-lstm.wasm', 'tesseract.js-core/tesseract-core-simd-lstm.wasm'],
  // Where a processor or a setting leaves WASM without SIMD, the nets do not run and this one reads stamps too.
  ['ocr/tesseract-core-lstm.js', 'tesseract.js-core/tesseract-core-lstm.js'],
  ['ocr/tesseract-core-lstm.wasm', 'tesseract.js-core/tesseract-core-lstm.wasm'],
  ['ort/ort-wasm-simd-threaded.mjs', 'onnxruntime-web/dist/ort-wasm-simd-threaded.mjs'],
  ['ort/ort-wasm-simd-threaded.wasm', 'onnxruntime-web/dist/ort-wasm-simd-threaded.wasm'],
  // Of the builds that know WebGPU this is the smallest (16.8 MB; those that do not suspend WASM have 27 and 28 MB).
  ['ort/ort-wasm-simd-threaded.jspi.mjs', 'onnxruntime-web/dist/ort-wasm-simd-threaded.jspi.mjs'],
  ['ort/ort-wasm-simd-threaded.jspi.wasm', 'onnxruntime-web/dist/ort-wasm-simd-threaded.jspi.wasm'],
] as const;

/**
 * The print engine's language file, unpacked: its worker's own unpacking takes 13 MB, just when its WASM starts as well. A
 * packed extension is as small, for its archive packs the file again.
 */
const unpackEnglish = (): string => {
  const to = resolve(root, '.cache/packaged/eng.traineddata');
  mkdirSync(dirname(to), { recursive: true });
  const packed = readFileSync(fromPackage('@tesseract.js-data/eng/4.0.0_best_int/eng.traineddata.gz'));
  writeFileSync(to, gunzipSync(packed));
  return to;
};

const netsAreThere = () => {
  const models = resolve(root, 'public/models');
  return existsSync(models) && readdirSync(models).some((file) => file.endsWith('.onnx'));
};

export default defineConfig({
  imports: false,
  manifestVersion: 3,
  vite: () => ({
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    // The net runtime loads its WASM from the packaged folder; otherwise the bundle would carry a second copy of 14 MB.
    resolve: { conditions: ['onnxruntime-web-use-extern-wasm', ...defaultClientConditions] },
    worker: { format: 'es' },
    build: { chunkSizeWarningLimit: 1500 },
  }),
  hooks: {
    'build:publicAssets': (_wxt, files) => {
      // The net runtime is 14 MB: it travels only with nets to run.
      const wanted = packagedFiles.filter(([to]) => !to.startsWith('ort/') || netsAreThere());
      for (const [relativeDest, from] of wanted) files.push({ relativeDest, absoluteSrc: fromPackage(from) });
      files.push({ relativeDest: 'ocr/eng.traineddata', absoluteSrc: unpackEnglish() });
    },
  },
  manifest: ({ browser }) => ({
    name: 'Tellstamp',
    description:
      "Reads a second-hand listing, decodes the maker's stamp, and shows what agrees, what contradicts and what to ask.",
    permissions: [...permissions(browser)],
    optional_host_permissions: ['https://*/*', 'http://*/*'],
    action: { default_title: 'Read this listing with Tellstamp' },
    content_security_policy: { extension_pages: contentSecurityPolicy },
    ...(browser === 'firefox'
      ? {
          browser_specific_settings: {
            gecko: {
              id: 'tellstamp@tellstamp.example',
              strict_min_version: '140.0',
              data_collection_permissions: { required: ['none'] },
            },
          },
        }
      : { minimum_chrome_version: '120' }),
  }),
});
