import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stampLinesOf } from '../../src/stamp';
import { type Browser, launch } from './launch';
import { WorkerPage } from './worker-page';

/** V8 gives WASM SIMD only with these instructions of x86; for other processors it has no such switch. */
const withoutSimd = ['--js-flags=--no-enable-sse4-1'];

const photo = (name: string): string =>
  readFileSync(new URL(`../market/site/photos/${name}`, import.meta.url)).toString('base64');

describe.skipIf(process.arch !== 'x64')('a browser whose WASM has no SIMD', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch({ flags: withoutSimd });
  });
  afterAll(() => browser?.close());

  it('reads stamps by the print engine, in its build without SIMD, and says that the nets did not start', async () => {
    const reader = await WorkerPage.open(browser, {});
    const answer = await reader.read(photo('l3-stamp.jpg'));
    const lines = answer.view ? stampLinesOf(answer.view.read) : [];
    expect(lines.map(({ engine, free }) => `${engine}: ${free.text}`)).toContain('tesseract: B1382640');
    expect(answer).toMatchObject({ runtime: null });
    expect(reader.words.join('\n')).toMatch(/the stamp nets did not start/);
    // Source of the module: the WebAssembly core specification, 2.0; it returns a vector of sixteen bytes.
    const vectors = [
      0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 8, 1, 6, 0, 65, 0, 253, 15, 11,
    ];
    const takes = await reader.page.evaluate((bytes) => WebAssembly.validate(new Uint8Array(bytes)), vectors);
    expect({ here: takes, inNode: WebAssembly.validate(new Uint8Array(vectors)) }).toEqual({
      here: false,
      inNode: true,
    });
  }, 120_000);
});
