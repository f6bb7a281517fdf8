import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type OpenEngines, openEngines } from '../../src/cli/engines';
import { openPhotoFile } from '../../src/cli/photo-file';
import { printedIn } from '../../src/photo';
import { modelCardSchema, readStamp, stampLinesOf } from '../../src/stamp';
import { keptReadings, shownInPhotos, stampPhotos, type Told, toldOf } from '../photos/stamp-readings';
import { type Browser, launch } from './launch';
import { openAsking, readInExtension } from './reader-messages';

const card = new URL('../../public/models/model-card.json', import.meta.url);
const { acceptance } = modelCardSchema.parse(JSON.parse(readFileSync(card, 'utf8')));
const demo = new URL('../market/site/photos/', import.meta.url);

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = await openAsking(browser);
});
afterAll(() => browser?.close());

const toldInExtension = async (folder: URL, files: readonly string[]): Promise<Record<string, Told>> => {
  const told: Record<string, Told> = {};
  for (const file of files) {
    const read = await readInExtension(page, file, readFileSync(new URL(file, folder)));
    const text = read.state === 'unread' ? read : { ...read, lines: stampLinesOf(read), printed: printedIn(read) };
    told[file] = toldOf(text, acceptance);
  }
  return told;
};

it('reads every committed photograph of a stamp in the extension exactly as Node does', async () => {
  const files = shownInPhotos().map(({ file }) => file);
  expect(await toldInExtension(stampPhotos, files)).toEqual(keptReadings());
}, 600_000);

it('reads the demo marketplace’s stamps in the extension as the command line does', async () => {
  const files = readdirSync(demo).filter((file) => file.includes('-stamp'));
  expect(files.length).toBeGreaterThanOrEqual(8);
  const open: OpenEngines = await openEngines();
  const here: Record<string, Told> = {};
  for (const file of files) {
    const photo = await openPhotoFile(new URL(file, demo).pathname);
    if (!photo.ok) throw new Error(photo.problem.code);
    here[file] = toldOf(await readStamp(photo.value.image, file, open.engines), acceptance);
  }
  await open.close();
  expect(await toldInExtension(demo, files)).toEqual(here);
}, 300_000);
