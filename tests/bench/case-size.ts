import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { serialize } from 'node:v8';
import sharp from 'sharp';
import { buildCase, type Case } from '../../src/case';
import { matchPhotoFiles } from '../../src/cli/listing-photos';
import { readPhotoFiles } from '../../src/cli/read-photos';
import { readSavedPage } from '../../src/cli/saved-page';
import { builtInMakers } from '../../src/maker';
import type { Quad } from '../../src/photo';
import { lineMargin, lineSize, pictureQuality } from '../../src/reader/pictures';
import { stampLinesOf } from '../../src/stamp';
import { packing } from '../../src/store/packing';
import type { KeptPicture } from '../../src/watch';
import { latestLookOf } from '../../src/watch/saved-case';
import { launch } from '../browser/launch';
import { sampleRecord } from '../unit/watch/sample-case';

const site = new URL('../market/site/', import.meta.url);
const names = [
  'ondrasse-carryall-30-1995',
  'ondrasse-carryall-25-1987',
  'ondrasse-carryall-30-italy',
  'calderwick-and-rook-ledger-32',
  'tessaro-vell-busta-28',
];
const now = '2026-03-01T10:00:00.000Z';

/** A case with its photos read, and its pictures as the former build kept them and as this one does. */
interface Measured {
  kase: Case;
  pictures: Record<'jpeg' | 'webp', KeptPicture[]>;
}

/** How large and how well pictures were kept, and are. */
const former = { face: { width: 240, height: 240, quality: 70 }, line: { width: 560, height: 160, quality: 85 } };
const quality = 100 * pictureQuality;
const today = { face: { width: 240, height: 240, quality }, line: { ...lineSize, quality } };

/** A line with the leather around it, as the reader cuts it, within the photo. */
function aroundOf(quad: Quad, { width, height }: { width: number; height: number }) {
  const [xs, ys] = [quad.map(({ x }) => x), quad.map(({ y }) => y)];
  const edge = lineMargin * Math.hypot(quad[3].x - quad[0].x, quad[3].y - quad[0].y);
  const [left, top] = [
    Math.max(0, Math.floor(Math.min(...xs) - edge)),
    Math.max(0, Math.floor(Math.min(...ys) - edge)),
  ];
  return {
    left,
    top,
    width: Math.min(width, Math.ceil(Math.max(...xs) + edge)) - left,
    height: Math.min(height, Math.ceil(Math.max(...ys) + edge)) - top,
  };
}

async function demoCase(name: string): Promise<Measured> {
  const read = await readSavedPage(
    fileURLToPath(new URL(`${name}.html`, site)),
    `https://attic-arcade.example/${name}`,
    now,
  );
  if (!read.ok) throw new Error(read.problem.code);
  const matched = matchPhotoFiles(read.value, fileURLToPath(new URL('photos', site)));
  if (!matched.ok) throw new Error(matched.problem.code);
  const { listing, files } = matched.value;
  const photos = await readPhotoFiles(files, () => undefined);
  const kase = buildCase({ listing, photos, corrections: [], makers: builtInMakers, now });
  const pathOf = (photoId: string) => files.find((file) => file.photoId === photoId)?.path ?? '';
  const [first] = listing.photos;
  const cuts = [
    ...(first
      ? [{ photoId: first.id, lineId: null, photo: sharp(pathOf(first.id)), ...{ was: former.face, is: today.face } }]
      : []),
    ...kase.decodings.flatMap(({ from }) => {
      const photo = from.kind === 'photo' ? photos.find(({ photoId }) => photoId === from.photoId) : undefined;
      const line = photo && stampLinesOf(photo).find(({ id }) => from.kind === 'photo' && id === from.lineId);
      if (photo?.state !== 'read' || !line) return [];
      const cut = sharp(pathOf(line.photoId)).extract(aroundOf(line.quad, photo));
      return [{ photoId: line.photoId, lineId: line.id, photo: cut, was: former.line, is: today.line }];
    }),
  ];
  const kept = (form: 'jpeg' | 'webp') =>
    Promise.all(
      cuts.map(async ({ photoId, lineId, photo, was, is }) => {
        const { width, height, quality } = form === 'jpeg' ? was : is;
        const small = photo.clone().resize(width, height, { fit: 'inside', withoutEnlargement: true });
        const bytes = await small[form]({ quality }).toBuffer();
        return { photoId, lineId, picture: `data:image/${form};base64,${bytes.toString('base64')}` };
      }),
    );
  return { kase, pictures: { jpeg: await kept('jpeg'), webp: await kept('webp') } };
}

/** Bytes of a value as V8 writes it, which is how Chromium stores it before the disk's own compression. */
const bytesOf = (values: unknown[]): number => values.reduce<number>((sum, value) => sum + serialize(value).length, 0);

/**
 * Version 2 of a record: the whole case with its conclusions, once for each look, and pictures as text. What V8 meets twice it
 * writes once, so that each look is an object of its own.
 */
function before({ kase, pictures }: Measured, looks: number): unknown[] {
  const look = { case: kase, pictures: pictures.jpeg };
  const { looks: _, shown, ...rest } = sampleRecord();
  return [{ ...rest, ...look, earlier: Array.from({ length: looks - 1 }, () => structuredClone(look)) }];
}

/** The record of today with what it names: looks deflated, each picture once. */
async function kept({ kase, pictures }: Measured, looks: number): Promise<unknown[]> {
  const made = await latestLookOf(kase, pictures.webp, { rules: '0.1.0', makers: builtInMakers }, packing);
  if (!made.ok) throw new Error(made.problem.code);
  const { latest, parts } = made.value;
  const [name] = latest.looks;
  if (!name) throw new Error('a record without a look');
  const record = sampleRecord({ ...latest, looks: Array.from({ length: looks }, () => name) });
  return [record, ...Array.from({ length: looks }, () => parts.looks).flat(), ...parts.pictures];
}

const copies = 60;

/** Bytes that Chromium's database takes for one copy of these values, its own compression included. */
async function bytesOnDisk(values: unknown[]): Promise<number> {
  const browser = await launch();
  const page = await browser.context.newPage();
  await page.goto(browser.extensionUrl('watchlist.html'));
  const plain = values.map((value) =>
    JSON.parse(
      JSON.stringify(value, (_, one) => (one instanceof Uint8Array ? { base64: packing.toBase64(one) } : one)),
    ),
  );
  await page.evaluate(
    async ([written, times]) => {
      const database = await new Promise<IDBDatabase>((opened) => {
        const request = indexedDB.open('measured', 1);
        request.onupgradeneeded = () => request.result.createObjectStore('values');
        request.onsuccess = () => opened(request.result);
      });
      // Nothing in here has a name of its own: what compiles this file would look for a helper that the page has not.
      const values = written.map((value) =>
        Object.fromEntries(
          Object.entries(value).map(([name, one]) => [
            name,
            one?.base64 === undefined ? one : Uint8Array.from(atob(one.base64), (character) => character.charCodeAt(0)),
          ]),
        ),
      );
      for (let time = 0; time < times; time++) {
        const transaction = database.transaction('values', 'readwrite', { durability: 'strict' });
        for (const [at, value] of values.entries())
          transaction.objectStore('values').put({ ...value, time }, `${time} ${at}`);
        await new Promise((done) => {
          transaction.oncomplete = done;
        });
      }
      database.close();
    },
    [plain, copies] as [Record<string, { base64?: string } | null>[], number],
  );
  await browser.end();
  const folder = join(browser.profile, 'Default', 'IndexedDB');
  const bytes = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((sum, entry) => sum + statSync(join(entry.parentPath, entry.name)).size, 0);
  rmSync(browser.profile, { recursive: true });
  return bytes / copies;
}

/**
 * What a saved case takes, as a share of what the record of version 2 took, which kept every conclusion and its pictures
 * as text: for the demo listings with their photos read, of one look and of three. As V8 writes the values, and for all
 * of them together in a database of Chromium, which compresses what is not compressed yet. Pictures are made here as the
 * reader makes them, by another program.
 */
export async function bench(): Promise<void> {
  const cases: [name: string, measured: Measured][] = [];
  for (const name of names) cases.push([name, await demoCase(name)]);
  const rows: Record<string, Record<string, string>> = {};
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)}%`;
  const kilobytes = (bytes: number) => (bytes / 1024).toFixed(1);
  for (const looks of [1, 3]) {
    const all: { was: unknown[]; is: unknown[] } = { was: [], is: [] };
    const what = looks === 1 ? 'one look' : `${looks} looks`;
    const note = (name: string, was: number, is: number) => {
      rows[name] = {
        ...rows[name],
        [`${what}, before KB`]: kilobytes(was),
        [`${what}, KB`]: kilobytes(is),
        [`${what}, share`]: percent(is, was),
      };
    };
    for (const [name, measured] of cases) {
      const [was, is] = [before(measured, looks), await kept(measured, looks)];
      note(name, bytesOf(was), bytesOf(is));
      all.was.push(...was);
      all.is.push(...is);
    }
    note('all', bytesOf(all.was), bytesOf(all.is));
    note('all, in Chromium', await bytesOnDisk(all.was), await bytesOnDisk(all.is));
  }
  console.table(rows);
}
