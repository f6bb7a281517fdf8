import { browser } from './api';

let closing: Promise<void> | null = null;

/**
 * Keeps what is stored (maker files, places pointed at, counters) to the extension's own pages: a script inside a web
 * page, which a page that broke out of its engine could speak through, neither reads nor writes it. Set at every start,
 * and awaited before a script goes into a page. A browser without this setting goes on without it.
 */
export function keepStorageToOwnPages(): Promise<void> {
  closing ??= close();
  return closing;
}

async function close(): Promise<void> {
  const accessLevel = 'TRUSTED_CONTEXTS' as const;
  await Promise.all(
    [browser.storage.local, browser.storage.session].map(async (area) => {
      try {
        await area.setAccessLevel?.({ accessLevel });
      } catch (error) {
        console.error('[tellstamp] the storage stays open to page scripts', error);
      }
    }),
  );
}
