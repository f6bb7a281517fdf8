import { browser } from '../browser/api';
import { openFullPage, openPanel, openReader } from '../browser/compat';
import { keepStorageToOwnPages } from '../browser/storage-access';
import { receive } from '../message/receive';
import { send, sendToPage } from '../message/send';
import { succeed } from '../problem';
import { onKeptLanguage, readLanguage } from '../store/language-setting';
import { dropPageRecord } from '../store/page-record';
import type { Language } from '../words/language';
import { menuWords } from '../words/menu';
import { keepBegunReadings } from './page/begun-readings';
import { injectPageScript, readPage } from './page/read-page';
import { fetchPhoto } from './photo/fetch-photo';

const menuItem = 'read-listing';
const watchListItem = 'open-watch-list';

/**
 * The worker's listeners, all added in one go: a stopped worker is woken for an event only if its listener was added
 * at once at the last start. It holds no state; what it must remember is in storage.
 */
export function startBackground(): void {
  const readings = keepBegunReadings({
    read: readPage,
    async stands(tabId) {
      const reply = await sendToPage(tabId, 'page.stands', {});
      return reply.ok && reply.value.stands;
    },
    now: () => performance.now(),
  });
  const readTab = (tab: chrome.tabs.Tab | undefined) => {
    if (tab?.id === undefined) return;
    const { id } = tab;
    const at = Date.now();
    openPanel(id).catch((error: unknown) => console.error('[tellstamp] the panel did not open', error));
    // The click gave the right to it: the page is read while the browser opens the panel.
    readings.begin(id);
    // A panel that is already open hears that its right to the tab is new; nobody hears it otherwise.
    send('tab.granted', { tabId: id, at });
  };

  keepStorageToOwnPages();
  browser.action.onClicked.addListener(readTab);
  browser.contextMenus.onClicked.addListener(({ menuItemId }, tab) => {
    if (menuItemId === menuItem) readTab(tab);
    else openFullPage();
  });
  browser.runtime.onInstalled.addListener(({ reason }) => {
    // Once, after installing: what this is, and something to try. An update opens nothing.
    if (reason === 'install') openFullPage('#start');
    readLanguage().then(offerMenus);
  });
  browser.runtime.onStartup.addListener(() => {
    readLanguage().then(nameButton);
  });
  onKeptLanguage((language) => {
    const { readListing, openList } = menuWords(language);
    browser.contextMenus.update(menuItem, { title: readListing });
    browser.contextMenus.update(watchListItem, { title: openList });
    nameButton(language);
  });
  browser.tabs.onRemoved.addListener((tabId) => {
    readings.drop(tabId);
    dropPageRecord(tabId);
  });
  receive('background', {
    'page.read': ({ tabId }) => readings.take(tabId),
    'page.mayRead': async ({ tabId }) => succeed({ mayRead: (await injectPageScript(tabId)).ok }),
    'photo.fetch': ({ tabId, photoId }) => fetchPhoto(tabId, photoId),
    'reader.open': async () => {
      await openReader();
      return succeed({});
    },
  });
}

/** The button's title stays until the browser is closed, and is the manifest's at the next start. */
const nameButton = (language: Language) => browser.action.setTitle({ title: menuWords(language).readListing });

/** The menus stay until the next update. */
function offerMenus(language: Language): void {
  const { readListing, openList } = menuWords(language);
  browser.contextMenus.removeAll(() => {
    browser.contextMenus.create({ id: menuItem, title: readListing, contexts: ['page', 'image'] });
    browser.contextMenus.create({ id: watchListItem, title: openList, contexts: ['action'] });
  });
  nameButton(language);
}
