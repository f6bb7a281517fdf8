import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { type Market, startMarket } from '../market/server';
import { type Browser, type LaunchOptions, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

const site = new URL('../market/site/', import.meta.url);
const patienceMs = 300_000;

/** A browser and a marketplace in which the panel can be brought into each of its states. */
export interface Stage {
  browser: Browser;
  market: Market;
  /** The address of a page under one of the names that lead here. */
  at(host: 'attic-arcade.example' | 'shop.example' | 'photos.attic-arcade.example', path: string): string;
  close(): Promise<void>;
}

/** The check that is made to fail where a page asks for it. */
const failing = 'return-terms';

export async function openStage(options: LaunchOptions = {}): Promise<Stage> {
  const market = await startMarket();
  const { port } = new URL(market.url);
  const names = ['attic-arcade.example', 'shop.example', 'photos.attic-arcade.example'];
  const browser = await launch({
    window: { width: 1100, height: 800 },
    ...options,
    flags: [`--host-resolver-rules=${names.map((name) => `MAP ${name} 127.0.0.1`).join(',')}`],
    change: letCheckFail,
  });
  return {
    browser,
    market,
    at: (host, path) => `http://${host}:${port}/${path}`,
    close: async () => {
      await browser.close();
      await market.close();
    },
  };
}

/** One check breaks in panels that say so before they open: nothing that a listing holds breaks one. */
async function letCheckFail(folder: string): Promise<void> {
  const start = new RegExp(`(id:.${failing}.,[\\s\\S]{0,600}?run\\([^)]*\\)\\{)`);
  let changed = 0;
  for (const file of await readdir(join(folder, 'chunks'))) {
    const path = join(folder, 'chunks', file);
    const before = await readFile(path, 'utf8');
    const after = before.replace(start, '$1if(globalThis.letCheckFail)throw new Error("made to fail");');
    if (after === before) continue;
    await writeFile(path, after);
    changed += 1;
  }
  if (changed !== 1) throw new Error(`the check ${failing} stands in ${changed} files of the build, not in one`);
}

/** A listing of the demo marketplace, with its words replaced and only so many of its photos. */
export async function variant(name: string, changes: [from: string, to: string][], photos?: number[]): Promise<string> {
  const page = await readFile(new URL(name, site), 'utf8');
  const changed = changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`${name} does not say ${from}`);
    return text.replaceAll(from, to);
  }, page);
  if (!photos) return changed;
  let at = 0;
  return changed.replace(/<img itemprop="image"[^>]*>/g, (photo) => (photos.includes(++at) ? photo : ''));
}

interface Opened {
  page: Page;
  panel: Page;
}

interface Opening {
  /** Runs in the panel before anything of it. */
  before?: () => void;
  /** Whether the button in the toolbar gives the right to the tab. */
  clicked?: boolean;
  until?: string;
}

const read = '[data-stage=done]';

export async function openListing(
  stage: Stage,
  url: string,
  { before, clicked = true, until = read }: Opening = {},
): Promise<Opened> {
  const { browser } = stage;
  const { page, tabId } = await openTab(browser, url);
  if (clicked) await clickToolbar(browser, page);
  const panel = await openPanel(browser, tabId, before);
  await panel.locator(until).first().waitFor({ state: 'attached', timeout: patienceMs });
  return { page, panel };
}

const html = 'text/html; charset=utf-8';
const contradictory = 'ondrasse-carryall-25-1987.html';

/** Every state that the panel of a tab can be in, each as a buyer comes into it. */
export const panelStates = {
  async reading(stage) {
    const held = '<link itemprop="image" href="held-back.jpg"></section>';
    const body = (await variant(contradictory, [], [1, 5])).replace('</section>', held);
    stage.market.make('held-back.jpg', 'never');
    stage.market.make('reading.html', { type: html, body });
    const before = () => {
      // Time stands still, so that what is waited for is waited for as long as the picture takes.
      performance.now = () => 0;
      const wait = globalThis.setTimeout.bind(globalThis);
      const kept = (call: () => void, ms = 0) => (ms > 20_000 ? 0 : wait(call, ms));
      globalThis.setTimeout = kept as typeof globalThis.setTimeout;
    };
    const until = '.answer[data-answer=reads]';
    return (await openListing(stage, stage.at('attic-arcade.example', 'reading.html'), { before, until })).panel;
  },
  async contradiction(stage) {
    return (await openListing(stage, stage.at('attic-arcade.example', contradictory))).panel;
  },
  async sound(stage) {
    return (await openListing(stage, stage.at('attic-arcade.example', 'ondrasse-carryall-30-1995.html'))).panel;
  },
  async 'no-file'(stage) {
    stage.market.make('no-file.html', { type: html, body: await variant(contradictory, [], [1, 5]) });
    return (await openListing(stage, stage.at('shop.example', 'no-file.html'))).panel;
  },
  async copies(stage) {
    const far = stage.at('photos.attic-arcade.example', 'photos/');
    const small: [string, string][] = [
      ['src="photos/', `src="${far}`],
      ['width="1200" height="900"', 'style="width:600px;height:450px"'],
    ];
    stage.market.make('copies.html', { type: html, body: await variant(contradictory, small, [1, 5]) });
    const { page, panel } = await openListing(stage, stage.at('attic-arcade.example', 'copies.html'));
    // Only the tab in front can be pictured, and a panel in a tab of its own opened before it.
    await page.bringToFront();
    await panel.evaluate(() => document.querySelector<HTMLButtonElement>('.progress-actions button')?.click());
    await panel.locator('.answer[data-answer=reads]').waitFor({ state: 'attached', timeout: patienceMs });
    await panel.locator(read).waitFor({ state: 'attached', timeout: patienceMs });
    await panel.bringToFront();
    return panel;
  },
  async 'seen-before'(stage) {
    const url = stage.at('attic-arcade.example', 'seen-before.html');
    stage.market.make('seen-before.html', { type: html, body: await variant(contradictory, [], [5]) });
    const first = await openListing(stage, url);
    await first.panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await first.panel.getByText('Kept.').waitFor();
    await Promise.all([first.panel.close(), first.page.close()]);
    const changes: [string, string][] = [
      ['480.00', '450.00'],
      ['made in 1987', 'made in 1988'],
    ];
    stage.market.make('seen-before.html', { type: html, body: await variant(contradictory, changes, [5]) });
    return (await openListing(stage, url)).panel;
  },
  async lot(stage) {
    const changes: [string, string][] = [
      ['Ondrasse Carryall 25, made in 1987', 'Ondrasse Carryall 25 and matching wallet'],
      ['This Carryall 25 was made in 1987, one owner', 'The bag was made in 1987, the wallet in 2003. One owner'],
    ];
    stage.market.make('lot.html', { type: html, body: await variant(contradictory, changes, [1, 5]) });
    return (await openListing(stage, stage.at('attic-arcade.example', 'lot.html'))).panel;
  },
  async nothing(stage) {
    return (await openListing(stage, stage.at('attic-arcade.example', 'help.html'))).panel;
  },
  async 'not-a-listing'(stage) {
    return (await openListing(stage, stage.at('attic-arcade.example', 'index.html'))).panel;
  },
  async lapsed(stage) {
    const url = stage.at('attic-arcade.example', contradictory);
    return (await openListing(stage, url, { clicked: false, until: '[role=alert]' })).panel;
  },
  async 'failed-check'(stage) {
    const before = () => {
      (globalThis as { letCheckFail?: boolean }).letCheckFail = true;
    };
    stage.market.make('failed.html', { type: html, body: await variant(contradictory, [], [5]) });
    return (await openListing(stage, stage.at('attic-arcade.example', 'failed.html'), { before })).panel;
  },
  async offline(stage) {
    const { market } = stage;
    const body = (await variant(contradictory, [], [])).replace(
      '</section>',
      '<link itemprop="image" href="gone-1.jpg"><link itemprop="image" href="gone-2.jpg"></section>',
    );
    market.make('offline.html', { type: html, body });
    for (const photo of ['gone-1.jpg', 'gone-2.jpg']) market.make(photo, { status: 503, type: 'text/plain', body: '' });
    return (await openListing(stage, stage.at('attic-arcade.example', 'offline.html'))).panel;
  },
} satisfies Record<string, (stage: Stage) => Promise<Page>>;
