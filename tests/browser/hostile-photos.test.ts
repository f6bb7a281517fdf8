import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodePhoto } from '../../src/cli/photo-file';
import { isTooWeakRead, openPhoto, type PhotoRead, readPhoto } from '../../src/photo';
import { type StampEngines, stampLinesOf, stampReader } from '../../src/stamp';
import { hostilePhotos } from '../photos/hostile-photos';
import { problemInEnglish } from '../said';
import { type Browser, launch } from './launch';
import { openAsking, readInExtension } from './reader-messages';

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await openAsking(browser);
});
afterAll(() => browser?.close());

/** Engines that find nothing: what is compared is how the photo is taken in. */
const noPrint: StampEngines = { print: { read: async () => [] } };

/** What the command line says of a photo under the name that the extension gives it. */
async function readByCommand(photoId: string, bytes: Uint8Array): Promise<PhotoRead> {
  const opened = await openPhoto(new Uint8Array(bytes), `photo ${photoId}`, decodePhoto);
  if (!opened.ok) return { state: 'unread', photoId, problem: opened.problem };
  return readPhoto(opened.value.image, photoId, [stampReader(noPrint)]);
}

const takenIn = (read: PhotoRead) => (read.state === 'read' ? `read ${read.width} × ${read.height}` : read.problem);

describe('hostile photos each give a result or a clear problem in the extension, the same as on the command line', () => {
  it.each(hostilePhotos)('$name: $outcome', async ({ name, bytes, outcome }) => {
    const photo = await bytes();
    const read = await readInExtension(page, name, photo);
    expect(read.state === 'read' ? takenIn(read) : read.problem.code).toBe(outcome);
    expect(takenIn(read)).toEqual(takenIn(await readByCommand(name, photo)));
    if (read.state === 'unread') {
      const { what, remedy } = problemInEnglish(read.problem);
      expect(what).not.toMatch(/undefined|Error|\[object/);
      expect(remedy).not.toBe('');
    }
  });

  it('all black is too weak to say that it shows no stamp', async () => {
    const black = hostilePhotos.find(({ name }) => name === 'all black')!;
    const read = await readInExtension(page, 'p1', await black.bytes());
    expect([stampLinesOf(read), isTooWeakRead(read)]).toEqual([[], true]);
  });
});
