import { browser } from '../../browser/api';
import { watchTab } from '../../browser/watch-tab';
import { fromBase64, toBase64 } from '../../message/bytes';
import { workInTurn } from '../../message/in-turn';
import type { OutputOf, PhotoBytes } from '../../message/protocol';
import { sendToPage } from '../../message/send';
import { type Disturbance, fail, problem, type Result, succeed } from '../../problem';
import { inTime } from '../in-time';
import { injectPageScript } from '../page/read-page';

type Shown = OutputOf<'photo.show'>;

/** A picture that something disturbed is taken again this many times in all. */
const attempts = 3;
/** How long one picture may take: scrolling, waiting for what is lazy, decoding, painting. */
const captureMs = 12_000;
/** Chrome takes two pictures a second of all its tabs, and refuses more. */
const betweenMs = 550;
/** Share by which a picture may be wider than tall against its window: what rounding makes. */
const mostSkew = 0.01;

const inTurn = workInTurn();
let lastPicture = 0;

/**
 * The last way to a photo: show it free on the page, take a picture of the visible tab, cut it to the photo. Works only
 * while the tab is the visible one and the click's right stands. One at a time: each scrolls the page. A picture during
 * which the tab, its window, its address or the photo's place changed is thrown away.
 */
export const capturePhoto = (tabId: number, urls: string[]): Promise<Result<PhotoBytes>> =>
  inTurn(() => captureUndisturbed(tabId, urls));

async function captureUndisturbed(tabId: number, urls: string[]): Promise<Result<PhotoBytes>> {
  for (let attempt = 1; ; attempt++) {
    const taken = await inTime(captureMs, captureOnce(tabId, urls), 'late').catch(() => fail(late));
    if (taken.ok || taken.problem.code !== 'capture-disturbed' || attempt === attempts) return taken;
  }
}

async function captureOnce(tabId: number, urls: string[]): Promise<Result<PhotoBytes>> {
  const tab = await watchTab(tabId);
  try {
    if (!tab.active) return fail(inBackground);
    const injected = await injectPageScript(tabId, 'shown-photo');
    if (!injected.ok) return injected;
    const shown = await sendToPage(tabId, 'photo.show', { urls });
    if (!shown.ok) return shown;
    const picture = await pictureOf(tab.windowId);
    const stands = await sendToPage(tabId, 'photo.stands', {});
    // In this order: the browser tells of what happened before it answers.
    const moved = (stands.ok ? stands.value.why : 'no-answer') ?? (await tab.whatMoved());
    if (moved !== null) return fail(disturbed(moved));
    return picture === null ? fail(noPicture) : await cutOut(picture, shown.value);
  } catch {
    return fail(noPicture);
  } finally {
    tab.end();
    await sendToPage(tabId, 'photo.unshow', {});
  }
}

/** The picture of a window's visible tab, a data address; null when the browser gives none. */
async function pictureOf(windowId: number): Promise<string | null> {
  const wait = lastPicture + betweenMs - performance.now();
  if (wait > 0) await new Promise((end) => setTimeout(end, wait));
  lastPicture = performance.now();
  try {
    return await browser.tabs.captureVisibleTab(windowId, { format: 'png' });
  } catch {
    return null;
  }
}

async function cutOut(picture: string, shown: Shown): Promise<Result<PhotoBytes>> {
  const { x, y, width, height, viewport, part, largest, isLargest } = shown;
  const bytes = fromBase64(picture.slice(picture.indexOf(',') + 1));
  const whole = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  try {
    const scale = whole.width / viewport.width;
    // The window changed its size meanwhile, or the browser draws the page in another than its own.
    if (Math.abs(whole.height / viewport.height / scale - 1) > mostSkew) return fail(disturbed('other-shape'));
    // Whole pixels that lie inside the photo: the page around it is no part of it.
    const [left, top] = [Math.ceil(x * scale - 0.01), Math.ceil(y * scale - 0.01)];
    const across = Math.floor((x + width) * scale + 0.01) - left;
    const down = Math.floor((y + height) * scale + 0.01) - top;
    const canvas = new OffscreenCanvas(across, down);
    canvas.getContext('2d')?.drawImage(whole, -left, -top);
    const cut = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
    // A pixel or two less is the edge that was not whole.
    const fullSize =
      !part && isLargest && largest !== null && across + 2 >= largest.width && down + 2 >= largest.height;
    const came = { way: 'capture', fullSize, part, largest } as const;
    return succeed({ base64: toBase64(cut), mediaType: 'image/png', came });
  } finally {
    whole.close();
  }
}

const disturbed = (why: Disturbance) => problem('capture-disturbed', 'tab', { why });
const inBackground = disturbed('in-background');
const late = problem('capture-failed', 'tab', { why: 'late' });
const noPicture = problem('capture-failed', 'tab', { why: 'no-picture' });
