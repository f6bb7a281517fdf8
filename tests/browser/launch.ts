import { existsSync } from 'node:fs';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type BrowserContext, chromium, type Page, type Worker } from 'playwright-core';
import { findChromium, missingChromium } from '../../src/cli/find-chromium';

/** Folder of the build for Chromium. */
export const built = fileURLToPath(new URL('../../.output/chrome-mv3', import.meta.url));

export interface LaunchOptions {
  /** Hosts that this copy of the build may read without a click, as match patterns. A test cannot click the toolbar. */
  hosts?: string[];
  /** Changes a copy of the build before it is loaded. */
  change?: (folder: string) => Promise<void>;
  /** Profile folder to use again; without it a fresh one is made and removed at the end. */
  profile?: string;
  colorScheme?: 'light' | 'dark';
  /** Further switches of the browser. */
  flags?: readonly string[];
  /** Leaves the page open that a fresh install opens. */
  startPage?: boolean;
  /** Opens real windows; the machine has to have a display. */
  shown?: boolean;
  /**
   * Pages lie in a window of this size, as users have it. Without it the debugger lays them out in a size of its own,
   * and a picture of the tab does not show what the page believes to show.
   */
  window?: { width: number; height: number };
}

export interface Browser {
  context: BrowserContext;
  id: string;
  profile: string;
  extensionUrl(path: string): string;
  worker(): Promise<Worker>;
  /** Ends the browser and keeps the profile. */
  end(): Promise<void>;
  close(): Promise<void>;
}

/** Starts Chromium with the built extension, and fails at once when either is missing. */
export async function launch(options: LaunchOptions = {}): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error(missingChromium);
  if (!existsSync(join(built, 'manifest.json')))
    throw new Error('The extension is not built: run "npm run build" first.');
  const profile = options.profile ?? (await mkdtemp(join(tmpdir(), 'tellstamp-profile-')));
  const extension = options.hosts || options.change ? await copyOf(profile, options) : built;
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    headless: false,
    colorScheme: options.colorScheme ?? 'light',
    ...(options.window ? { viewport: null } : {}),
    args: [
      ...(options.window ? [`--window-size=${options.window.width},${options.window.height}`] : []),
      // A scrollbar's width would change what fits.
      ...(options.shown ? [] : ['--headless=new', '--hide-scrollbars']),
      '--no-sandbox',
      `--disable-extensions-except=${extension}`,
      `--load-extension=${extension}`,
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--enable-unsafe-extension-debugging',
      ...(options.flags ?? []),
    ],
  });
  const worker = () => workerOf(context);
  const id = new URL((await worker()).url()).host;
  // A fresh profile opens the first page, which would else come between the tabs that a test opens.
  if (options.profile === undefined && !options.startPage) await (await startPageOf(context)).close();
  const end = () => context.close();
  return {
    context,
    id,
    profile,
    extensionUrl: (path) => `chrome-extension://${id}/${path}`,
    worker,
    end,
    close: async () => {
      await end();
      await rm(profile, { recursive: true, force: true });
    },
  };
}

/** The page that opens after installing. */
export async function startPageOf(context: BrowserContext): Promise<Page> {
  const isStart = (page: Page) => page.url().endsWith('watchlist.html#start');
  const page = context.pages().find(isStart) ?? (await context.waitForEvent('page'));
  await page.waitForURL(/watchlist\.html#start$/);
  return page;
}

async function workerOf(context: BrowserContext): Promise<Worker> {
  return context.serviceWorkers()[0] ?? (await context.waitForEvent('serviceworker'));
}

/** The build with some hosts granted at install, or with the change that is asked for. Nothing else differs from what is shipped. */
async function copyOf(profile: string, { hosts = [], change }: LaunchOptions): Promise<string> {
  const copy = join(profile, 'extension-under-test');
  if (existsSync(copy)) return copy;
  await cp(built, copy, { recursive: true });
  const file = join(copy, 'manifest.json');
  const manifest = JSON.parse(await readFile(file, 'utf8'));
  if (hosts.length > 0) await writeFile(file, JSON.stringify({ ...manifest, host_permissions: hosts }));
  await change?.(copy);
  return copy;
}

/** Opens an address in a tab of its own, with the number that the extension knows the tab by. */
export async function openTab(browser: Browser, url: string): Promise<{ page: Page; tabId: number }> {
  const worker = await browser.worker();
  const arrives = browser.context.waitForEvent('page');
  const tabId = await worker.evaluate(
    async (address) => (await chrome.tabs.create({ url: address })).id as number,
    url,
  );
  const page = await arrives;
  await page.waitForURL(url);
  await page.waitForLoadState();
  return { page, tabId };
}

/** Opens the panel of a tab in a tab of its own, after `before` has run in it: the same page as in the side panel, which tests cannot reach. */
export async function openPanel(browser: Browser, tabId: number, before?: () => void): Promise<Page> {
  const panel = await browser.context.newPage();
  if (before) await panel.addInitScript(before);
  await panel.setViewportSize({ width: 400, height: 900 });
  await panel.goto(browser.extensionUrl(`sidepanel.html?tab=${tabId}`));
  return panel;
}
