import type { Problem } from '../problem';
import { browser } from './api';

/** Every difference between Chrome and Firefox that the extension meets, in one place. */

interface FirefoxSidebar {
  open(): Promise<void>;
}

const sidebar = (): FirefoxSidebar | undefined =>
  (browser as unknown as { sidebarAction?: FirefoxSidebar }).sidebarAction;

/** Firefox has no offscreen documents: the panel runs the reader itself there. */
export const hasOffscreen = (): boolean => 'offscreen' in browser && browser.offscreen !== undefined;

export const panelPage = 'sidepanel.html';
export const readerPage = 'reader.html';
export const fullPage = 'watchlist.html';
/** Opens a part of the full page in a tab of its own. */
export const openFullPage = (hash = '') => browser.tabs.create({ url: browser.runtime.getURL(`${fullPage}${hash}`) });
/** Brings a tab to the front, with its window; false when it is gone. */
export async function bringToFront(tabId: number): Promise<boolean> {
  try {
    const tab = await browser.tabs.update(tabId, { active: true });
    if (tab) await browser.windows.update(tab.windowId, { focused: true });
    return tab !== undefined;
  } catch {
    return false;
  }
}
export const panelPath = (tabId: number): string => `${panelPage}?tab=${tabId}`;

/**
 * Opens the panel for a tab. Must run in the click's own call stack: both browsers refuse it after the first await,
 * so nothing here is awaited before `open`.
 */
export function openPanel(tabId: number): Promise<void> {
  const firefox = sidebar();
  if (firefox) return firefox.open();
  browser.sidePanel.setOptions({ tabId, path: panelPath(tabId), enabled: true });
  return browser.sidePanel.open({ tabId });
}

/** An opening under way: the browser refuses a second one at once, while the first document is still deaf. */
let opening: Promise<void> | null = null;

/** Starts the offscreen reader unless it stands, and ends when it hears. Safe to call from anywhere, at any time. */
export function openReader(): Promise<void> {
  opening ??= createReader().finally(() => {
    opening = null;
  });
  return opening;
}

async function createReader(): Promise<void> {
  if (!hasOffscreen()) return;
  try {
    await browser.offscreen.createDocument({
      url: readerPage,
      reasons: ['WORKERS' as chrome.offscreen.Reason],
      justification: 'Reads the stamp in the listing’s photos in a worker, without blocking the panel.',
    });
  } catch (error) {
    if (!/single offscreen/i.test(String(error))) throw error;
  }
}

/** The page is one that the browser keeps from every extension. */
export function notReadable(url = ''): Problem {
  const isPdf = /^[^?#]*\.pdf([?#]|$)/i.test(url);
  return {
    code: isPdf ? 'page-is-pdf' : 'page-not-readable',
    where: 'tab',
    what: isPdf
      ? 'this tab shows a PDF document, which the browser lets no extension read'
      : 'the browser lets no extension read this page',
    remedy: isPdf
      ? 'Save the photo out of it, or take a screenshot of the stamp, and read that as a photo.'
      : 'Open a listing and click the toolbar button there.',
  };
}

/** What a refused injection means for the user. The browsers say it in words only. */
export function injectionProblem(error: unknown): Problem {
  const words = error instanceof Error ? error.message : String(error);
  if (/No tab with id|Invalid tab|tab was closed/i.test(words)) {
    return { code: 'tab-gone', where: 'tab', what: 'the tab was closed', remedy: 'Open the listing again.' };
  }
  if (/chrome:|chrome-extension:|about:|gallery|webstore|extensions? page|error page|devtools/i.test(words)) {
    return notReadable();
  }
  return {
    code: 'right-lapsed',
    where: 'tab',
    what: 'the right to read this tab has lapsed',
    remedy: 'Click the toolbar button on the page.',
  };
}
