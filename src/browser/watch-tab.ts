import type { Disturbance } from '../problem';
import { browser } from './api';

/** Where a tab stands: what has to be the same before and after its picture was taken. */
interface Stand {
  windowId: number;
  active: boolean;
  url: string | undefined;
}

export interface WatchedTab {
  windowId: number;
  active: boolean;
  /** What happened to the tab since; null when it stood. */
  whatMoved(): Promise<Disturbance | null>;
  end(): void;
}

/**
 * Watches a tab while a picture of it is taken. The browser pictures whatever is in front of a window, so a look before
 * and one after are not enough: a tab that goes and comes back between would leave another page's picture. Every event
 * counts that moves the tab, brings another to the front of its window, or takes it to another page.
 */
export async function watchTab(tabId: number): Promise<WatchedTab> {
  let happened: Disturbance | null = null;
  let windowId: number | null = null;
  const note = (what: Disturbance) => {
    happened ??= what;
  };
  const onActivated = (active: { tabId: number; windowId: number }) => {
    if (active.tabId === tabId || active.windowId === windowId) note('other-tab');
  };
  const onMoved = (id: number) => {
    if (id === tabId) note('other-window');
  };
  const onUpdated = (id: number, change: { status?: string; url?: string }) => {
    if (id === tabId && (change.url !== undefined || change.status === 'loading')) note('other-page');
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
  const { windowId, active, url } = await browser.tabs.get(tabId);
  return { windowId, active, url };
}

function difference(before: Stand, after: Stand): Disturbance | null {
  if (after.windowId !== before.windowId) return 'other-window';
  if (!after.active) return 'other-tab';
  return after.url === before.url ? null : 'other-page';
}
