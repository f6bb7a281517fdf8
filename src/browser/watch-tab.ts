import { browser } from './api';

/** Where a tab stands: what has to be the same before and after its picture was taken. */
interface Stand {
  windowId: number;
  active: boolean;
  url: string | undefined;
  status: string | undefined;
}

export interface WatchedTab {
  windowId: number;
  active: boolean;
  /** What happened to the tab since, in words; null when it stood. */
  whatMoved(): Promise<string | null>;
  end(): void;
}

/**
 * Watches a tab while a picture of it is taken. The browser pictures whatever is in front of a window, so a look before
 * and one after are not enough: a tab that goes and comes back between would leave another page's picture. Every event
 * counts that moves the tab, brings another to the front of its window, or takes it to another page.
 */
export async function watchTab(tabId: number): Promise<WatchedTab> {
  let happened: string | null = null;
  let windowId: number | null = null;
  const note = (what: string) => {
    happened ??= what;
  };
  const onActivated = (active: { tabId: number; windowId: number }) => {
    if (active.tabId === tabId || active.windowId === windowId) note('another tab came to the front');
  };
  const onMoved = (id: number) => {
    if (id === tabId) note('the tab was moved to another window');
  };
  const onUpdated = (id: number, change: { status?: string; url?: string }) => {
    if (id === tabId && (change.url !== undefined || change.status === 'loading')) note('the page went on to another');
  };
  const { onActivated: activated, onDetached, onAttached, onUpdated: updated } = browser.tabs;
  activated.addListener(onActivated);
  onDetached.addListener(onMoved);
  onAttached.addListener(onMoved);
  updated.addListener(onUpdated);
  const end = () => {
    activated.removeListener(onActivated);
    onDetached.removeListener(onMoved);
    onAttached.removeListener(onMoved);
    updated.removeListener(onUpdated);
  };
  try {
    const before = await standOf(tabId);
    windowId = before.windowId;
    return {
      ...before,
      whatMoved: async () => happened ?? difference(before, await standOf(tabId)) ?? happened,
      end,
    };
  } catch (error) {
    end();
    throw error;
  }
}

async function standOf(tabId: number): Promise<Stand> {
  const { windowId, active, url, status } = await browser.tabs.get(tabId);
  return { windowId, active, url, status };
}

function difference(before: Stand, after: Stand): string | null {
  if (after.windowId !== before.windowId) return 'the tab was moved to another window';
  if (!after.active) return 'another tab came to the front';
  return after.url === before.url ? null : 'the page went on to another';
}
