import { browser } from '../../browser/api';
import { toBase64 } from '../../message/bytes';
import type { PhotoBytes } from '../../message/protocol';
import { sendToPage } from '../../message/send';
import { fail, type Problem, problem, type Result, succeed, within } from '../../problem';
import { readPageRecord } from '../../store/page-record';
import { inTime } from '../in-time';
import { injectPageScript } from '../page/read-page';
import { addressToAsk, isMadeByThePage } from './address';
import { capturePhoto } from './capture-photo';
import { photoDeadlineMs } from './photo-limits';
import { requestPhoto } from './request-photo';

/** Failures that another right to the same address does not mend. */
const sameForAll = new Set(['photo-missing', 'photo-is-drawing', 'photo-redirected', 'photo-too-large', 'photo-late']);

/** Failures after which a smaller version is the largest there is. */
const noLoss = new Set(['photo-missing', 'photo-is-drawing']);

/**
 * Bytes of one photo of the listing last read in a tab, by the first way that works: fetch from the page (as the
 * page's own scripts could), fetch from here with a granted host, a picture of the visible tab cut to the photo.
 * The first two have one deadline together.
 */
export async function fetchPhoto(tabId: number, photoId: string): Promise<Result<PhotoBytes>> {
  const record = await readPageRecord(tabId);
  const photo = record?.photos.find(({ id }) => id === photoId);
  if (!record || !photo) return fail(problem('photo-unknown', photoId));
  const urls = addressesOf(photo.urls, record.url);
  if (urls.length === 0) return fail(problem('address-refused', photoId));
  const isPrivateWindow = await browser.tabs.get(tabId).then(
    ({ incognito }) => incognito,
    () => true,
  );
  const end = Date.now() + photoDeadlineMs;
  const left = () => Math.max(1, end - Date.now());
  let last: Problem | null = null;
  // Once a larger version was kept back, a smaller one is a stand-in; one that is gone or no photo is no loss.
  let fullSize = true;
  let largestLeadsOn = false;
  for (const [index, url] of urls.entries()) {
    const bytes = await fromPage(tabId, url, left());
    if (bytes.ok) return sized(bytes.value, fullSize);
    last = bytes.problem;
    largestLeadsOn ||= index === 0 && last.code === 'photo-redirected';
    if (last.code === 'photo-late') break;
    // The background asks from the normal profile, whose files would tell of the host: from a private window it does not.
    if (!isPrivateWindow && !sameForAll.has(last.code) && !url.startsWith('blob:')) {
      const granted = await fromBackground(url, left());
      if (granted.ok) return sized(granted.value, fullSize);
      if (granted.problem.code !== 'host-not-granted') last = granted.problem;
    }
    if (!noLoss.has(last.code) && !url.startsWith('blob:')) fullSize = false;
  }
  if (last?.code === 'right-lapsed') return fail(last);
  // A drawing at an address is a badge or a sign; one that the page made may hold a photo, and is looked at as shown.
  if (last?.code === 'photo-is-drawing' && !urls.some((url) => url.startsWith('blob:')))
    return fail({ ...last, where: `photo ${photoId}` });
  const captured = await capturePhoto(tabId, photo.urls);
  if (captured.ok) return largestLeadsOn ? succeed(ledOn(captured.value)) : captured;
  const where = `photo ${photoId}`;
  // What is not on the page says nothing; what kept the picture from being taken does, and can be mended.
  if (last === null || captured.problem.code === 'photo-not-shown')
    return fail({ ...(last ?? captured.problem), where });
  // A right to the host mends a picture that was not taken, but not an address that leads on.
  if (largestLeadsOn) return fail({ ...problem('photo-redirected', where), after: within(captured.problem) });
  return fail({ ...captured.problem, where, after: within(last) });
}

const sized = (bytes: PhotoBytes, fullSize: boolean): Result<PhotoBytes> =>
  succeed({ ...bytes, came: { ...bytes.came, fullSize } });

const ledOn = (bytes: PhotoBytes): PhotoBytes =>
  bytes.came.way === 'capture' ? { ...bytes, came: { ...bytes.came, ledOn: true } } : bytes;

/** The addresses of one photo that are asked, largest first, each once. */
function addressesOf(urls: readonly string[], page: string): string[] {
  const asked = urls.flatMap((url) => (isMadeByThePage(url, page) ? url : (addressToAsk(url, page) ?? [])));
  return [...new Set(asked)].slice(0, 3);
}

/** Asks the page script; puts it back first when the page was reloaded under it. A page that stands still is late. */
async function fromPage(tabId: number, url: string, withinMs: number): Promise<Result<PhotoBytes>> {
  const ask = async (): Promise<Result<PhotoBytes>> => {
    let reply = await sendToPage(tabId, 'photo.fetchInPage', { url, withinMs });
    if (!reply.ok && reply.problem.code === 'no-answer') {
      const injected = await injectPageScript(tabId);
      if (!injected.ok) return injected;
      reply = await sendToPage(tabId, 'photo.fetchInPage', { url, withinMs });
    }
    return reply.ok ? succeed({ ...reply.value, came: { way: 'page', fullSize: true } }) : reply;
  };
  return inTime(withinMs, ask(), 'late').catch(() => fail(problem('photo-late', url, { seconds: null })));
}

/** A fetch with the extension's own right, only where the user granted the host. */
async function fromBackground(url: string, withinMs: number): Promise<Result<PhotoBytes>> {
  const { protocol, hostname } = new URL(url);
  const granted = await browser.permissions.contains({ origins: [`${protocol}//${hostname}/*`] });
  if (!granted) return fail(problem('host-not-granted', hostname, { host: hostname }));
  const requested = await requestPhoto(url, { credentials: 'omit', referrerPolicy: 'no-referrer', withinMs });
  if (!requested.ok) return requested;
  const bytes = new Uint8Array(await requested.value.arrayBuffer());
  return succeed({
    base64: toBase64(bytes),
    mediaType: requested.value.type,
    came: { way: 'background', fullSize: true },
  });
}
