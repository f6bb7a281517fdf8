import './page/plain-validation';
import type { PhotoView } from '../message/protocol';
import { type GreyImage, greyOf, type OpenedPhoto, openPhoto, readPhoto, readPixels, release } from '../photo';
import type { Adjustment } from '../photo/adjustment-types';
import { fail, type Problem, problem, type Result, reported, succeed } from '../problem';
import { closerSide, glanceAt, glanceSide, type StampEngines, stampLinesOf, stampReader } from '../stamp';
import { adjustImage } from './adjust';
import { cutPhoto, decodePhoto } from './decode-photo';
import { openEngines } from './engines';
import { drawLine, drawThumbnail, releaseCanvas, releaseImage, toCanvas } from './pictures';
import type { GlanceAnswer, LifeBegun, ReaderAnswer, ReaderRequest } from './worker-messages';

type ReadRequest = Extract<ReaderRequest, { kind: 'read' }>;
type GlanceRequest = Extract<ReaderRequest, { kind: 'glance' }>;

/** Lines whose picture is cut out: more are never shown. */
const mostCrops = 12;
let engines: ReturnType<typeof openEngines> | null = null;

self.addEventListener('message', async ({ data }: MessageEvent<ReaderRequest>) => {
  if (data.kind === 'start') {
    engines = openEngines(data.files, data.adapter);
    if (data.life !== undefined) holdLock(data.life);
    return;
  }
  if (data.kind === 'glance') {
    const glance = await glancePhoto(data).catch((error: unknown) => fail(unreadable(data.photoId, error)));
    const answer: GlanceAnswer = glance.ok
      ? { id: data.id, likelihood: glance.value }
      : { id: data.id, problem: glance.problem };
    self.postMessage(answer);
    return;
  }
  const view = await readBytes(data).catch((error: unknown) => fail(unreadable(data.photoId, error)));
  const answer: ReaderAnswer = view.ok
    ? { id: data.id, view: view.value, runtime: (await engines)?.runtime() ?? null }
    : { id: data.id, view: null, problem: view.problem };
  self.postMessage(answer);
});

/** A worker that ends says nothing; the browser gives its locks to who waits for them. */
function holdLock(name: string): void {
  const held = () => {
    self.postMessage({ alive: true } satisfies LifeBegun);
    return new Promise<never>(() => {});
  };
  navigator.locks?.request(name, held).catch(() => {});
}

/** The bytes of a photo that a document of the extension holds. */
const bytesAt = async (file: string) => new Uint8Array(await (await fetch(file)).arrayBuffer());

/** Small copies of photos that were glanced at: a closer look decodes none a second time. A megabyte each at most. */
const glanced = new Map<string, GreyImage>();

async function glancePhoto({ photoId, file, closer }: GlanceRequest): Promise<Result<number>> {
  if (engines === null) return fail(unreadable(photoId, 'not started'));
  let small = glanced.get(file);
  if (small === undefined) {
    const opened = await openPhoto(await bytesAt(file), `photo ${photoId}`, decodePhoto, closerSide ** 2);
    if (!opened.ok) return opened;
    small = greyOf(opened.value.image);
    releaseImage(opened.value.image);
    glanced.set(file, small);
  }
  return succeed(await glanceAt(small, (await engines).engines, closer ? closerSide : glanceSide));
}

async function readBytes({ photoId, file, adjustment }: ReadRequest): Promise<Result<PhotoView>> {
  const small = glanced.get(file);
  if (small !== undefined) release(small.data);
  glanced.delete(file);
  const opened = await openPhoto(await bytesAt(file), `photo ${photoId}`, decodePhoto, readPixels, cutPhoto);
  if (!opened.ok) return opened;
  if (engines === null) return fail(unreadable(photoId, 'not started'));
  try {
    return succeed(await readDecoded(opened.value, photoId, adjustment, (await engines).engines));
  } finally {
    releaseImage(opened.value.image);
  }
}

async function readDecoded(
  { image: whole, ...file }: OpenedPhoto<ImageData>,
  photoId: string,
  adjustment: Adjustment,
  recognisers: StampEngines,
): Promise<PhotoView> {
  const isWhole = adjustment.turn === 0 && !adjustment.invert && adjustment.crop === null;
  const part = isWhole ? undefined : adjustImage(whole, adjustment);
  const read = await readPhoto(whole, photoId, [stampReader(recognisers, part)], file);
  if (part) release(part.image.data);
  // Only now: a canvas beside the pixels and what the nets make of them would be the most that reading needs.
  const canvas = toCanvas(whole);
  const thumbnail = await drawThumbnail(canvas);
  const crops = await Promise.all(
    stampLinesOf(read)
      .slice(0, mostCrops)
      .map(async ({ id, quad }) => ({ lineId: id, picture: await drawLine(canvas, quad) })),
  );
  releaseCanvas(canvas);
  return { read, thumbnail, crops };
}

function unreadable(photoId: string, error: unknown): Problem {
  console.error('[tellstamp] photo not read', error);
  return problem('reader-failed', `photo ${photoId}`, reported(error));
}
