import { drawMadePhoto } from './draw-made-photo';
import { drawingProblem, isDrawing } from './drawing';
import type { Reply } from './envelope';

/** What the page script does with photos. It is given addresses by the background, which has checked them. */

const maxBytes = 24_000_000;
const waitMs = 20_000;

/** Fetches as the page's own scripts could: the browser's cross-origin rules decide. */
export async function fetchInPage({ url }: { url: string }): Promise<Reply> {
  const fetched = await fetchAddress(url);
  if (fetched.ok || !url.startsWith('blob:') || fetched.problem.code === 'photo-too-large') return fetched;
  const drawn = await drawMadePhoto(url);
  if (drawn !== null) return answerWith(drawn);
  if (fetched.problem.code === 'photo-is-drawing') return fetched;
  return refuse('photo-without-address', 'the page made it, and its bytes can be had from no address');
}

async function fetchAddress(url: string): Promise<Reply> {
  let response: Response;
  try {
    const sameOrigin = new URL(url).origin === location.origin;
    response = await fetch(url, {
      mode: 'cors',
      credentials: sameOrigin ? 'same-origin' : 'omit',
      signal: AbortSignal.timeout(waitMs),
    });
  } catch (error) {
    const late = error instanceof DOMException && error.name === 'TimeoutError';
    return late
      ? refuse('photo-late', 'the photo did not arrive within 20 seconds')
      : refuse('photo-unreachable', 'the page may not fetch it, or the server did not answer');
  }
  if (!response.ok) return refuse('photo-missing', `the server answered ${response.status}`);
  try {
    return await answerWith(await response.blob());
  } catch {
    return refuse('photo-late', 'the photo did not arrive whole');
  }
}

async function answerWith(photo: Blob): Promise<Reply> {
  if (photo.size > maxBytes) return refuse('photo-too-large', 'the file is larger than 24 MB');
  // Such a file can hold programs, and the reader takes none; what the page shows of a made one can be had as a picture.
  if (isDrawing(photo.type)) return { ok: false, problem: drawingProblem('page') };
  return { ok: true, value: { base64: await base64Of(photo), mediaType: photo.type } };
}

/** By way of a file reader: in Firefox a page script may not look into the bytes of a fetched buffer. */
function base64Of(photo: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result).replace(/^[^,]*,/, '')));
    reader.addEventListener('error', () => reject(reader.error));
    reader.readAsDataURL(photo);
  });
}

let scrolledFrom: { x: number; y: number } | null = null;

/** Frames after which a photo scrolled into view is in the browser's picture too: laid out, painted, put together. */
const framesToPaint = 4;

/** Brings the photo into view and says where it stands. */
export async function showPhoto({ urls }: { urls: string[] }): Promise<Reply> {
  const image = [...document.images].find(({ currentSrc, src }) => urls.includes(currentSrc) || urls.includes(src));
  // An image that failed or is still on its way shows its frame only: a picture of that is no photo.
  if (!image?.complete || image.naturalWidth === 0)
    return refuse('photo-not-shown', 'the page does not show the photo');
  scrolledFrom ??= { x: scrollX, y: scrollY };
  image.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
  // The browser decodes a picture only when it comes into view, beside its painting: until then there is a white hole.
  await image.decode().catch(() => {});
  for (let frame = 0; frame < framesToPaint; frame += 1) await new Promise(requestAnimationFrame);
  const { left, top, right, bottom } = image.getBoundingClientRect();
  const [x, y] = [Math.max(0, left), Math.max(0, top)];
  const width = Math.max(0, Math.min(right, innerWidth) - x);
  const height = Math.max(0, Math.min(bottom, innerHeight) - y);
  return { ok: true, value: { x, y, width, height, viewportWidth: innerWidth } };
}

/** Puts the page back where the user had it. */
export async function unshowPhoto(): Promise<Reply> {
  if (scrolledFrom) scrollTo({ left: scrolledFrom.x, top: scrolledFrom.y, behavior: 'instant' });
  scrolledFrom = null;
  return { ok: true, value: {} };
}

const refuse = (code: string, what: string): Reply => ({
  ok: false,
  problem: {
    code,
    where: 'page',
    what,
    remedy: 'Open the photo on the page and read again, or type the code by hand.',
  },
});
