import { fail, type Result, succeed } from '../problem';
import { browser } from './browser';
import { fromBase64, toBase64 } from './bytes';
import type { PhotoBytes } from './protocol';
import { sendToPage } from './send';

/** The smallest side, in CSS pixels, of a picture on the page that is worth cutting out. */
const smallestSide = 80;

/**
 * The last way to a photo: scroll it into view, take a picture of the visible tab, cut it to the photo. Works only
 * while the tab is the visible one and the click's right stands. Puts the page back where it was.
 */
export async function capturePhoto(tabId: number, windowId: number, urls: string[]): Promise<Result<PhotoBytes>> {
  const tab = await browser.tabs.get(tabId);
  if (!tab.active) return fail(problem('the tab is in the background'));
  const shown = await sendToPage(tabId, 'photo.show', { urls });
  if (!shown.ok) return shown;
  try {
    const { x, y, width, height, viewportWidth } = shown.value;
    if (Math.min(width, height) < smallestSide) return fail(problem('the page shows the photo too small'));
    const address = await browser.tabs.captureVisibleTab(windowId, { format: 'png' });
    const bytes = fromBase64(address.slice(address.indexOf(',') + 1));
    const whole = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
    const scale = whole.width / viewportWidth;
    const canvas = new OffscreenCanvas(Math.round(width * scale), Math.round(height * scale));
    canvas.getContext('2d')?.drawImage(whole, -Math.round(x * scale), -Math.round(y * scale));
    whole.close();
    const cut = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/png' })).arrayBuffer());
    return succeed({
      base64: toBase64(cut),
      mediaType: 'image/png',
      came: { way: 'capture', fullSize: false, part: false, largest: null },
    });
  } catch {
    return fail(problem('the browser gave no picture of the tab'));
  } finally {
    await sendToPage(tabId, 'photo.unshow', {});
  }
}

const problem = (what: string) => ({
  code: 'capture-failed',
  where: 'tab',
  what,
  remedy: 'Bring the tab to the front with the photo in view, and read again.',
});
