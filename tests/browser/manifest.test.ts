import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { spokenLanguages } from '../../src/words/language';

const output = fileURLToPath(new URL('../../.output/', import.meta.url));
const read = (target: string, file = 'manifest.json') => JSON.parse(readFileSync(join(output, target, file), 'utf8'));

function filesOf(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesOf(path) : [path];
  });
}

describe.each(['chrome-mv3', 'firefox-mv3'])('the build for %s', (target) => {
  const manifest = read(target);

  it('is Manifest V3, asks for no site at install and runs no code from elsewhere', () => {
    expect(manifest.manifest_version).toBe(3);
    expect(manifest.host_permissions).toBeUndefined();
    expect(manifest.content_scripts).toBeUndefined();
    expect(manifest.web_accessible_resources).toBeUndefined();
    expect(manifest.optional_host_permissions).toEqual(['https://*/*', 'http://*/*']);
    const policy: string = manifest.content_security_policy.extension_pages;
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("style-src 'self'");
    expect(policy).toContain("object-src 'none'");
    expect(policy).not.toMatch(/script-src[^;]*https?:/);
  });

  it('opens by a shortcut that does what the button does', () => {
    expect(manifest.commands).toEqual({
      _execute_action: { suggested_key: { default: 'Alt+Shift+T' }, description: '__MSG_readListing__' },
    });
  });

  it('is described in each language of the screens, whole', () => {
    expect(manifest.default_locale).toBe('en');
    const asked = [...JSON.stringify(manifest).matchAll(/__MSG_(\w+)__/g)].map(([, name]) => name);
    expect(new Set(asked)).toEqual(new Set(['description', 'readListing']));
    expect(readdirSync(join(output, target, '_locales')).sort()).toEqual([...spokenLanguages].sort());
    const said = spokenLanguages.map((language) => read(target, `_locales/${language}/messages.json`));
    for (const messages of said) {
      expect(Object.keys(messages).sort()).toEqual([...new Set(asked)].sort());
      // Chrome's store takes 132 characters at most.
      expect(messages.description.message.length).toBeLessThanOrEqual(132);
    }
    const texts = said.flatMap((messages) =>
      Object.values(messages).map((one) => (one as { message: string }).message),
    );
    expect(new Set(texts).size).toBe(texts.length);
  });

  it('carries its recognisers, and of the demonstration the photos of one listing', () => {
    const needed = [
      'models/model-card.json',
      'ort/ort-wasm-simd-threaded.mjs',
      'ort/ort-wasm-simd-threaded.wasm',
      'ort/ort-wasm-simd-threaded.jspi.mjs',
      'ort/ort-wasm-simd-threaded.jspi.wasm',
      'ocr/worker.min.js',
      'ocr/tesseract-core-simd-lstm.js',
      'ocr/tesseract-core-simd-lstm.wasm',
      'ocr/tesseract-core-lstm.js',
      'ocr/tesseract-core-lstm.wasm.delta',
      'print-with-simd.js',
      'print-without-simd.js',
      'ocr/eng.traineddata.packed',
    ];
    for (const file of needed) expect(existsSync(join(output, target, file)), file).toBe(true);
    const names = filesOf(join(output, target)).map((path) => path.slice(output.length));
    const photos = ['front', 'lining', 'stamp'].map((name) => `${target}/demo/${name}.jpg`);
    expect(names.filter((name) => /market|attic|\.jpg$|\.map$/.test(name)).sort()).toEqual(photos);
  });

  it('has no inline script, style or event attribute in its pages', () => {
    for (const path of filesOf(join(output, target)).filter((name) => name.endsWith('.html'))) {
      const page = readFileSync(path, 'utf8');
      expect(page).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\sstyle=|\son\w+=/);
    }
  });

  it('keeps the page script at 47 KB gzipped or less', () => {
    const script = readFileSync(join(output, target, 'content-scripts/listing.js'));
    expect(gzipSync(script).length).toBeLessThanOrEqual(47 * 1024);
    const showing = readFileSync(join(output, target, 'content-scripts/shown-photo.js'));
    expect(gzipSync(showing).length).toBeLessThanOrEqual(7 * 1024);
    const pointing = readFileSync(join(output, target, 'content-scripts/pointing.js'));
    expect(gzipSync(pointing).length).toBeLessThanOrEqual(5 * 1024);
  });
});

describe('what each browser alone needs', () => {
  it('Chrome: side panel and offscreen reader, and no permission beyond the written ones', () => {
    const manifest = read('chrome-mv3');
    expect([...manifest.permissions].sort()).toEqual(
      ['activeTab', 'contextMenus', 'offscreen', 'scripting', 'sidePanel', 'storage', 'unlimitedStorage'].sort(),
    );
    expect(manifest.side_panel.default_path).toBe('sidepanel.html');
  });

  it('Firefox: a sidebar that waits to be opened, an id, and the statement that nothing is collected', () => {
    const manifest = read('firefox-mv3');
    expect([...manifest.permissions].sort()).toEqual(
      ['activeTab', 'contextMenus', 'scripting', 'storage', 'unlimitedStorage'].sort(),
    );
    expect(manifest.sidebar_action).toMatchObject({ default_panel: 'sidepanel.html', open_at_install: false });
    expect(manifest.browser_specific_settings.gecko.data_collection_permissions).toEqual({ required: ['none'] });
  });
});
