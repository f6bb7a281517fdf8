import { fileURLToPath } from 'node:url';
import { serialize } from 'node:v8';
import sharp from 'sharp';
import { buildCase, type Case } from '../../src/case';
import { matchPhotoFiles } from '../../src/cli/listing-photos';
import { readPhotoFiles } from '../../src/cli/read-photos';
import { readSavedPage } from '../../src/cli/saved-page';
import { builtInMakers } from '../../src/maker';
import { stampLinesOf } from '../../src/stamp';
import { packing } from '../../src/store/packing';
import type { KeptPicture } from '../../src/watch';
import { latestLookOf } from '../../src/watch/saved-case';
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

async function demoCase(name: string): Promise<Measured> {
  const read = await readSavedPage(
    fileURLToPath(new URL(`${name}.html`, site)),
    `https://attic-arcade.example/${name}`,
    now,
  );
  if (!read.ok) throw new Error(read.problem.what);
  const matched = matchPhotoFiles(read.value, fileURLToPath(new URL('photos', site)));
  if (!matched.ok) throw new Error(matched.problem.what);
  const { listing, files } = matched.value;
  const photos = await readPhotoFiles(files, () => undefined);
  const kase = buildCase({ listing, photos, corrections: [], makers: builtInMakers, now });
  const pathOf = (photoId: string) => files.find((file) => file.photoId === photoId)?.path ?? '';
  const [first] = listing.photos;
  const cuts = [
    ...(first
      ? [
          {
            photoId: first.id,
            lineId: null,
            picture: sharp(pathOf(first.id)).resize(240, 240, { fit: 'inside' }),
            quality: 70,
          },
        ]
      : []),
    ...kase.decodings.flatMap(({ from }) => {
      const photo = from.kind === 'photo' ? photos.find(({ photoId }) => photoId === from.photoId) : undefined;
      const line = photo && stampLinesOf(photo).find(({ id }) => from.kind === 'photo' && id === from.lineId);
      if (!line) return [];
      const [xs, ys] = [line.quad.map(({ x }) => x), line.quad.map(({ y }) => y)];
      const [left, top] = [Math.max(0, Math.floor(Math.min(...xs))), Math.max(0, Math.floor(Math.min(...ys)))];
      const size = { width: Math.ceil(Math.max(...xs)) - left, height: Math.ceil(Math.max(...ys)) - top };
      const cut = sharp(pathOf(line.photoId)).extract({ left, top, ...size });
      return [
        { photoId: line.photoId, lineId: line.id, picture: cut.resize(560, 160, { fit: 'inside' }), quality: 85 },
      ];
    }),
  ];
  const kept = (form: 'jpeg' | 'webp') =>
    Promise.all(
      cuts.map(async ({ photoId, lineId, picture, quality }) => {
        const bytes = await picture.clone()[form]({ quality }).toBuffer();
        return { photoId, lineId, picture: `data:image/${form};base64,${bytes.toString('base64')}` };
      }),
    );
  return { kase, pictures: { jpeg: await kept('jpeg'), webp: await kept('webp') } };
}

/** Bytes of a value as V8 writes it, which is how Chromium stores it; what the disk's own compression saves is not counted. */
const bytesOf = (value: unknown): number => serialize(value).length;

/**
 * Version 2 of a record: the whole case with its conclusions, once for each look, and pictures as text. What V8 meets twice it
 * writes once, so that each look is an object of its own.
 */
function before({ kase, pictures }: Measured, looks: number): number {
  const look = { case: kase, pictures: pictures.jpeg };
  const { looks: _, shown, ...rest } = sampleRecord();
  return bytesOf({ ...rest, ...look, earlier: Array.from({ length: looks - 1 }, () => structuredClone(look)) });
}

/** The record of today with what it names: looks deflated, each picture once. */
async function today({ kase, pictures }: Measured, looks: number): Promise<number> {
  const made = await latestLookOf(kase, pictures.webp, { rules: '0.1.0', makers: builtInMakers }, packing);
  if (!made.ok) throw new Error(made.problem.what);
  const { latest, parts } = made.value;
  const [name] = latest.looks;
  if (!name) throw new Error('a record without a look');
  const record = sampleRecord({ ...latest, looks: Array.from({ length: looks }, () => name) });
  const each = parts.looks.reduce((sum, look) => sum + bytesOf(look), 0);
  return bytesOf(record) + looks * each + parts.pictures.reduce((sum, one) => sum + bytesOf(one), 0);
}

/**
 * What a saved case takes on the disk, as a share of what the record of version 2 took, which kept every conclusion and its
 * pictures as text: for the demo listings with their photos read, of one look and of three. Pictures are made here as the
 * reader makes them, by another program.
 */
export async function bench(): Promise<void> {
  const cases: [name: string, measured: Measured][] = [];
  for (const name of names) cases.push([name, await demoCase(name)]);
  const rows: Record<string, Record<string, string>> = {};
  const all = new Map([1, 3].map((looks) => [looks, { before: 0, today: 0 }]));
  const kilobytes = (bytes: number) => (bytes / 1024).toFixed(1);
  const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)}%`;
  for (const [name, measured] of cases) {
    const row: Record<string, string> = {};
    for (const [looks, sum] of all) {
      const [was, is] = [before(measured, looks), await today(measured, looks)];
      sum.before += was;
      sum.today += is;
      const what = looks === 1 ? 'one look' : `${looks} looks`;
      Object.assign(row, {
        [`${what}, before KB`]: kilobytes(was),
        [`${what}, KB`]: kilobytes(is),
        [`${what}, share`]: percent(is, was),
      });
    }
    rows[name] = row;
  }
  console.table(rows);
  for (const [looks, sum] of all)
    console.log(`All, ${looks} look(s) each: ${percent(sum.today, sum.before)} of before.`);
}
