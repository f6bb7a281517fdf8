import { createHash } from 'node:crypto';
import { openEngines } from '../../src/cli/engines';
import { cropPixels, type PixelImage } from '../../src/photo';
import { readStamp, type StampEngines } from '../../src/stamp';
import { bare, type Judged, judge, share } from './stamp/judge';
import { cutThrough, type ListedPhoto, photosAtHand, pixels, turnedPhoto } from './stamp/real';

/** Folder that `tests/bench/stamp/collect-real.ts` filled. */
const folder = process.env.STAMP_REAL_PHOTOS;
/** Lists what was accepted and wrong, and what was not read. */
const lists = process.env.STAMP_BENCH_MISREAD === '1';
/** `seen`, `aside` or both: what was set aside is opened once, at the end. */
const part = process.env.STAMP_REAL_PART ?? 'both';
/** Degrees by which the photos that are read as they lie are turned, every 15 unless said otherwise. */
const step = Number(process.env.STAMP_REAL_STEP ?? 15);
const turns = Array.from({ length: Math.ceil(360 / step) - 1 }, (_, at) => step * (at + 1));
/** Degrees by which photos without a code are turned: four turns unless said otherwise (`0` takes a quarter of the time). */
const emptyTurns = (process.env.STAMP_REAL_EMPTY_TURNS ?? '0,90,180,270').split(',').map(Number);
/** Kinds of photos that are read, all unless said otherwise; `half` of them is drawn by lot, the same half each time. */
const kinds = process.env.STAMP_REAL_KINDS?.split(',');
const half = process.env.STAMP_REAL_HALF === '1';
const isDrawn = ({ kind, file }: Photo): boolean =>
  (kinds?.includes(kind) ?? true) && !(half && createHash('sha256').update(file).digest()[0]! % 2 === 1);
const book = { makers: [], maker: null, now: '2026-11-25' };

type Photo = ReturnType<typeof photosAtHand>[number];

/** Real photographs of public repositories, no maker named; skipped where they are not at hand. */
export async function bench(): Promise<void> {
  const photos = folder === undefined ? [] : photosAtHand(folder).filter(isDrawn);
  if (photos.length === 0) {
    console.log('skipped: not present (STAMP_REAL_PHOTOS names the folder that collect-real.ts filled)');
    return;
  }
  const { engines, close } = await openEngines();
  try {
    for (const aside of [false, true].filter((is) => part === 'both' || part === (is ? 'aside' : 'seen'))) {
      const own = photos.filter((photo) => photo.aside === aside);
      console.log(aside ? '\nset aside by source before anything was tuned' : '\nseen while tuning');
      console.table(await table(own, engines));
    }
  } finally {
    await close();
  }
}

async function judged(image: PixelImage, text: string | null, { net, print }: StampEngines): Promise<Judged> {
  const engines = net === undefined ? { print } : { print, net };
  return judge(await readStamp(image, 'p1', engines), text, net?.acceptance.stampScore ?? 0.5, book);
}

/** Whether a text is one of those that stand in the photo. */
const says = ({ text, also = [] }: Photo, read: string): boolean =>
  [text ?? '', ...also].some((one) => bare(one) === bare(read));
const isRight = ({ withSystems }: Judged, photo: Photo): boolean => says(photo, withSystems.text);

async function table(photos: readonly Photo[], engines: StampEngines): Promise<Record<string, string>[]> {
  const rows: Record<string, string>[] = [];
  const names = [...new Set(photos.filter(({ text }) => text !== null).map(({ kind, of }) => `${kind}, ${of}`))];
  for (const name of names) {
    const own = photos.filter(({ text, kind, of }) => text !== null && `${kind}, ${of}` === name);
    rows.push({ photos: name, ...(await codesRow(own, engines)) });
  }
  const empty = photos.filter(({ text }) => text === null);
  if (empty.length > 0) rows.push({ photos: 'without a code', ...(await emptyRow(empty, engines)) });
  return rows;
}

async function codesRow(photos: readonly Photo[], engines: StampEngines): Promise<Record<string, string>> {
  let [accepted, right, found, turned, turnedRight, cut, cutAccepted] = [0, 0, 0, 0, 0, 0, 0];
  for (const photo of photos) {
    const text = photo.text ?? '';
    const image = await pixels(photo.at);
    if (image === null) continue;
    const asItLies = await judged(image, text, engines);
    const { withSystems, lines } = asItLies;
    if (withSystems.accepted) accepted++;
    if (withSystems.accepted && isRight(asItLies, photo)) right++;
    if (lines.some((line) => says(photo, line))) found++;
    if (lists && !(withSystems.accepted && isRight(asItLies, photo))) {
      console.log(
        `  ${photo.file}: ${text}, read ${lines.join(' | ') || 'nothing'}${withSystems.accepted ? ', ACCEPTED' : ''}`,
      );
    }
    if (photo.of === 'whole' && isRight(asItLies, photo)) {
      for (const degrees of turns) {
        turned++;
        const other = await judged(turnedPhoto(image, degrees), text, engines);
        if (isRight(other, photo)) turnedRight++;
        else if (lists) console.log(`  turned by ${degrees}: ${text}, read ${other.lines.join(' | ') || 'nothing'}`);
      }
    }
    for (const piece of cutPhotos(photo, image)) {
      cut++;
      if ((await judged(piece, null, engines)).withSystems.accepted) cutAccepted++;
    }
  }
  return {
    'accepted and right': `${right} of ${photos.length}`,
    'accepted but wrong': `${accepted - right} of ${accepted}`,
    'among the lines': `${found} of ${photos.length}`,
    [`turned by ${turns.length} angles, as upright`]: turned === 0 ? '–' : `${share(turnedRight, turned)} of ${turned}`,
    'cut by the edge, accepted': cut === 0 ? '–' : `${cutAccepted} of ${cut}`,
  };
}

/** The photo ended in the last character, so that 0, 15, 30 … 75% of it are left. */
function cutPhotos({ quad, text }: ListedPhoto, image: PixelImage): PixelImage[] {
  if (quad === undefined || text === null) return [];
  return [0, 0.15, 0.3, 0.45, 0.6, 0.75].flatMap((left) => {
    const column = cutThrough(quad, text.length, left);
    return column === null || column < 24 ? [] : [cropPixels(image, 0, 0, Math.min(image.width, column), image.height)];
  });
}

async function emptyRow(photos: readonly Photo[], engines: StampEngines): Promise<Record<string, string>> {
  let [accepted, looked] = [0, 0];
  for (const photo of photos) {
    const image = await pixels(photo.at);
    if (image === null) continue;
    for (const degrees of emptyTurns) {
      looked++;
      const { withSystems } = await judged(degrees === 0 ? image : turnedPhoto(image, degrees), null, engines);
      if (!withSystems.accepted) continue;
      accepted++;
      console.log(`  ${photo.file}, turned by ${degrees}: accepted ${withSystems.text}`);
    }
  }
  return { 'accepted but wrong': `${accepted} of ${looked}, in ${emptyTurns.length} turns` };
}
