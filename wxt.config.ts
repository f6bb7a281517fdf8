import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { defaultClientConditions } from 'vite';
import { defineConfig } from 'wxt';
import { commands, contentSecurityPolicy, permissions } from './src/browser/manifest';
import {
  noteBundled,
  ownFile,
  packagedFilesOf,
  packagesIn,
  stripAddresses,
  thirdPartyFile,
  thirdPartyTexts,
} from './src/packaging';
import { defaultLocale, inManifest, localeFiles } from './src/words/manifest';

const bundled = noteBundled();

export default defineConfig({
  imports: false,
  manifestVersion: 3,
  vite: () => ({
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    // The net runtime loads its WASM from the packaged folder; otherwise the bundle would carry a second copy of 14 MB.
    resolve: { conditions: ['onnxruntime-web-use-extern-wasm', ...defaultClientConditions] },
    plugins: [stripAddresses(), bundled.plugin()],
    worker: { format: 'es', plugins: () => [stripAddresses(), bundled.plugin()] },
    build: { chunkSizeWarningLimit: 1500 },
  }),
  hooks: {
    'build:publicAssets': (_wxt, files) => {
      const packaged = packagedFilesOf();
      const packages = [...bundled.packages(), ...packaged.sources.flatMap(packagesIn)];
      files.push(
        ...packaged.files,
        ...localeFiles().map(({ path, text }) => ({ relativeDest: path, contents: text })),
        { relativeDest: ownFile, contents: readFileSync(resolve(import.meta.dirname, 'LICENSE'), 'utf8') },
        { relativeDest: thirdPartyFile, contents: thirdPartyTexts(packages) },
      );
    },
  },
  zip: {
    name: 'tellstamp',
    // All that the package is built from, and nothing else: a store's reviewer builds it again from these.
    includeSources: [
      '.npmrc',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'wxt.config.ts',
      'LICENSE',
      'README.md',
      'DEVELOPERS.md',
      'docs/*.md',
      'entrypoints/**',
      'public/**',
      'src/**',
    ],
    // What training goes on from: 10 MB that no build reads.
    excludeSources: ['src/stamp/training/checkpoints/**'],
  },
  manifest: ({ browser }) => ({
    name: 'Tellstamp',
    default_locale: defaultLocale,
    description: inManifest('description'),
    permissions: [...permissions(browser)],
    optional_host_permissions: ['https://*/*', 'http://*/*'],
    commands: { _execute_action: { ...commands._execute_action, description: inManifest('readListing') } },
    action: { default_title: inManifest('readListing') },
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
