import { useEffect, useState } from 'preact/hooks';
import { browser } from '../../browser/api';
import { Panel } from './Panel';

/**
 * The panel of the tab in front of its window: Firefox has one sidebar for all tabs, and so has a panel that was opened
 * from the browser's own menu. What it shows is never another tab's than the one beside it.
 */
export function FollowingPanel() {
  const tabId = useFrontTab();
  // Keyed, so that nothing of one tab's screen, such as an opened photo, stays beside another's.
  return tabId === null ? null : <Panel key={tabId} tabId={tabId} />;
}

function useFrontTab(): number | null {
  const [front, setFront] = useState<number | null>(null);
  useEffect(() => {
    let current = true;
    let ownWindow: number | null = null;
    const ask = async () => {
      const [visible] = await browser.tabs.query({ active: true, currentWindow: true });
      if (current && visible?.id !== undefined) setFront(visible.id);
    };
    const onActivated = ({ tabId, windowId }: { tabId: number; windowId: number }) => {
      if (windowId === ownWindow) setFront(tabId);
    };
    browser.tabs.onActivated.addListener(onActivated);
    browser.windows.getCurrent().then(async ({ id }) => {
      ownWindow = id ?? null;
      await ask();
    });
    return () => {
      current = false;
      browser.tabs.onActivated.removeListener(onActivated);
    };
  }, []);
  return front;
}
