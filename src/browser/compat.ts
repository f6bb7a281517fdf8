import { type Problem, problem, reported } from '../problem';
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
export const notReadable = (url = ''): Problem =>
  problem(/^[^?#]*\.pdf([?#]|$)/i.test(url) ? 'page-is-pdf' : 'page-not-readable', 'tab');

/** What a refused injection means for the user. The browsers say it in words only. */
export function injectionProblem(error: unknown): Problem {
  const words = reported(error).said;
  if (/No tab with id|Invalid tab|tab was closed/i.test(words)) {
    return problem('tab-gone', 'tab');
  }
  if (/chrome:|chrome-extension:|about:|gallery|webstore|extensions? page|error page|devtools/i.test(words)) {
    return notReadable();
  }
  return problem('right-lapsed', 'tab');
}
