import type { Plugin } from 'vite';
import { changed } from './packaged-files';

/**
 * The print engine's script brings the address of a content network, for those who tell it of no files of theirs, and its
 * whole package.json, for the sake of its version. Neither is ever used here, and neither is shipped.
 */
export const stripAddresses = (): Plugin => ({
  name: 'strip-addresses',
  enforce: 'pre',
  transform(code, id) {
    const file = id.replace(/[?\0].*/s, '');
    if (file.endsWith('/tesseract.js/package.json')) return JSON.stringify({ version: JSON.parse(code).version });
    if (!file.endsWith('/tesseract.js/src/worker/browser/defaultOptions.js')) return null;
    // biome-ignore lint/suspicious/noTemplateCurlyInString: this is what stands in the other file.
    return changed(code, [['`https://cdn.jsdelivr.net/npm/tesseract.js@v${version}/dist/worker.min.js`', "''"]], file);
  },
});
