import { browser } from '../browser/api';
import { fullPage, panelPage, readerPage } from '../browser/compat';
import type { Part } from './routes';

/** What the browser says of a message's sender; only the browser writes it, never the sender. */
export type Sender = Pick<chrome.runtime.MessageSender, 'id' | 'url' | 'origin' | 'tab'>;

/** Who can be told apart as a sender: the browser does not say which of our scripts inside a page speaks. */
export type SendingPart = Exclude<Part, 'pointing' | 'shown-photo'>;

const pages: Readonly<Record<string, SendingPart | undefined>> = {
  [panelPage]: 'panel',
  [fullPage]: 'full-page',
  [readerPage]: 'reader',
};

/**
 * Which part of the extension sent a message; null when none that sends: another extension, or a page of ours that
 * has nothing to ask. The background gives no address in one browser and that of its script or of a generated page in
 * the others, which are no pages of ours.
 */
export function partOf({ id, url, origin, tab }: Sender): SendingPart | null {
  if (id !== browser.runtime.id) return null;
  const own = browser.runtime.getURL('');
  const address = url ?? origin;
  if (address === undefined) return tab === undefined ? 'background' : 'page';
  if (!`${address}/`.startsWith(own)) return tab === undefined ? null : 'page';
  const file = address.slice(own.length).replace(/[?#].*/s, '');
  if (pages[file] !== undefined) return pages[file];
  const isBackground = tab === undefined && (file === '' || backgroundFiles.test(file));
  return isBackground ? 'background' : null;
}

/** The worker's script in Chrome, the page that Firefox makes for it (from memory; both are driven in browser tests). */
const backgroundFiles = /^(background\.js|_generated_background_page\.html)$/;
