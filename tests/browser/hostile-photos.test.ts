import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hostilePhotos } from '../photos/hostile-photos';
import { type Browser, launch } from './launch';
import { openAsking, readInExtension } from './reader-messages';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await openAsking(browser);
});
afterAll(() => browser?.close());

describe('hostile photos each give a result or a clear problem in the extension', () => {
  it.each(hostilePhotos)('$name: $inExtension', async ({ name, bytes, inExtension }) => {
    const read = await readInExtension(page, name, await bytes());
    expect(read.state === 'read' ? `read ${read.width} × ${read.height}` : read.problem.code).toBe(inExtension);
    if (read.state === 'unread') {
      expect(read.problem.what).not.toMatch(/undefined|Error|\[object/);
      expect(read.problem.remedy).not.toBe('');
    }
  });

  it('all black is too weak to say that it shows no stamp', async () => {
    const black = hostilePhotos.find(({ name }) => name === 'all black')!;
    expect(await readInExtension(page, 'p1', await black.bytes())).toMatchObject({ lines: [], tooWeak: true });
  });
});
