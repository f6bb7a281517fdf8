import { fail, type Problem, type Result, succeed } from '../problem';
import { addressIsAllowed, isMadeByThePage } from './address';
import { browser } from './browser';
import { toBase64 } from './bytes';
import { capturePhoto } from './capture-photo';
import { drawingProblem, isDrawing } from './drawing';
import { readPageRecord } from './page-record';
import type { PhotoBytes } from './protocol';
import { injectPageScript } from './read-page';
import { sendToPage } from './send';

const maxBytes = 24_000_000;
const waitMs = 20_000;

/**
 * Bytes of one photo of the listing last read in a tab, by the first way that works: fetch from the page (as the
 * page's own scripts could), fetch from here with a granted host, a picture of the visible tab cut to the photo.
 */
export async function fetchPhoto(tabId: number, photoId: string): Promise<Result<PhotoBytes>> {
  const record = await readPageRecord(tabId);
  const photo = record?.photos.find(({ id }) => id === photoId);
  if (!record || !photo) return fail(problem(photoId, 'photo-unknown', 'the page was not read, or has changed since'));
  const urls = photo.urls.filter((url) => mayBeAsked(url, record.url)).slice(0, 3);
  if (urls.length === 0) {
    return fail(problem(photoId, 'address-refused', 'its address is private, or not an http address'));
  }
  let last: Problem | null = null;
  // Once a larger version was kept back, a smaller one is a stand-in; one that is gone or no photo is no loss.
  let fullSize = true;
  for (const url of urls) {
    const bytes = await fromPage(tabId, url);
    if (bytes.ok) return sized(bytes.value, fullSize);
    last = bytes.problem;
    if (last.code === 'photo-missing' || last.code === 'photo-is-drawing' || url.startsWith('blob:')) continue;
    const granted = await fromBackground(url);
    if (granted.ok) return sized(granted.value, fullSize);
    if (granted.problem.code !== 'photo-missing') fullSize = false;
    if (granted.problem.code !== 'host-not-granted') last = granted.problem;
  }
  if (last?.code === 'right-lapsed') return fail(last);
  // A drawing at an address is a badge or a sign; one that the page made may hold a photo, and is looked at as shown.
  if (last?.code === 'photo-is-drawing' && !urls.some((url) => url.startsWith('blob:')))
    return fail({ ...last, where: `photo ${photoId}` });
  const captured = await capturePhoto(tabId, record.windowId, photo.urls);
  if (captured.ok) return captured;
  return fail(last ? { ...last, where: `photo ${photoId}` } : captured.problem);
}

const sized = (bytes: PhotoBytes, fullSize: boolean): Result<PhotoBytes> =>
  succeed({ ...bytes, came: { ...bytes.came, fullSize } });

const mayBeAsked = (url: string, page: string) => addressIsAllowed(url, page) || isMadeByThePage(url, page);

/** Asks the page script; puts it back first when the page was reloaded under it. */
async function fromPage(tabId: number, url: string): Promise<Result<PhotoBytes>> {
  let reply = await sendToPage(tabId, 'photo.fetchInPage', { url });
  if (!reply.ok && reply.problem.code === 'no-answer') {
    const injected = await injectPageScript(tabId);
    if (!injected.ok) return injected;
    reply = await sendToPage(tabId, 'photo.fetchInPage', { url });
  }
  return reply.ok ? succeed({ ...reply.value, came: { way: 'page', fullSize: true } }) : reply;
}

/** A fetch with the extension's own right, only where the user granted the host. A redirect is refused: it could lead inside. */
async function fromBackground(url: string): Promise<Result<PhotoBytes>> {
  const { protocol, hostname } = new URL(url);
  const granted = await browser.permissions.contains({ origins: [`${protocol}//${hostname}/*`] });
  if (!granted) return fail(problem(hostname, 'host-not-granted', `reading from ${hostname} was not allowed`));
  try {
    const response = await fetch(url, {
      credentials: 'omit',
      redirect: 'error',
      referrerPolicy: 'no-referrer',
      signal: AbortSignal.timeout(waitMs),
    });
    if (!response.ok) return fail(problem(url, 'photo-missing', `the server answered ${response.status}`));
    const bytes = new Uint8Array(await response.arrayBuffer());
    if (bytes.length > maxBytes) return fail(problem(url, 'photo-too-large', 'the file is larger than 24 MB'));
    const mediaType = response.headers.get('content-type') ?? '';
    if (isDrawing(mediaType)) return fail(drawingProblem(url));
    return succeed({ base64: toBase64(bytes), mediaType, came: { way: 'background', fullSize: true } });
  } catch {
    return fail(problem(url, 'photo-unreachable', 'the server did not answer'));
  }
}

const problem = (where: string, code: string, what: string): Problem => ({
  code,
  where,
  what,
  remedy: 'Open the photo on the page and read again, or type the code by hand.',
});
