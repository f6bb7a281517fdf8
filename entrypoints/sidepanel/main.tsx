import '../../src/bridge/plain-validation';
import { browser } from '../../src/bridge/browser';
import { Panel } from '../../src/ui/panel/Panel';
import { renderSpoken } from '../../src/ui/render-spoken';

/** The panel belongs to the tab in its address; a panel opened from the browser's own menu takes the visible tab. */
async function ownTab(): Promise<number | undefined> {
  const named = new URLSearchParams(location.search).get('tab');
  if (named !== null && /^\d+$/.test(named)) return Number(named);
  const [visible] = await browser.tabs.query({ active: true, currentWindow: true });
  return visible?.id;
}

const tabId = await ownTab();
if (tabId !== undefined) await renderSpoken(() => <Panel tabId={tabId} />, document.body);
