import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

/** What buyers come for, on the width and height of a common side panel; the steps are what a hand does. */
const [width, height] = [400, 760];
const mostActions = 3;

let market: Market;
let browser: Browser;
let listing: Page;
let panel: Page;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
  const { page, tabId } = await openTab(browser, `${market.url}ondrasse-carryall-25-1987.html`);
  listing = page;
  await clickToolbar(browser, page);
  panel = await openPanel(browser, tabId);
  await panel.setViewportSize({ width, height });
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached', timeout: 300_000 });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const press = (name: string | RegExp) => async () => {
  const one =
    typeof name === 'string' ? panel.getByRole('button', { name, exact: true }) : panel.getByRole('button', { name });
  await one.first().click();
};
const open = (words: string) => async () => panel.getByText(words, { exact: true }).first().click();
const type = (code: string) => async () => {
  await panel.getByRole('textbox', { name: 'Type the code as you see it' }).fill(code);
  await panel.keyboard.press('Enter');
};

/** Whether an element's words stand in the window as it is scrolled. */
const inSight = async (selector: string, words: RegExp) => {
  const one = panel.locator(selector).filter({ hasText: words }).first();
  await one.waitFor();
  const box = await one.boundingBox();
  return box !== null && box.y >= 0 && box.y + Math.min(box.height, 40) <= height;
};

type Action = () => Promise<unknown>;
const tasks: [task: string, actions: Action[], done: () => Promise<boolean>][] = [
  [
    'see what the stamp says beside what the listing says',
    [],
    () => inSight('.answer h2', /reads July 1998, Belgium\. The listing says 1987\./),
  ],
  [
    'see what speaks against it, what is open and what was not looked at',
    [],
    async () =>
      (await inSight('[data-line="against"]', /July 1998/)) &&
      (await inSight('[data-line="open"]', /\S/)) &&
      (await inSight('[data-line="not-looked-at"]', /Who made it/)),
  ],
  [
    'see why that is against the listing, with its ordinary reason',
    [press(/^The stamp in photo 5 reads/)],
    () => inSight('[data-check="code-against-claimed-date"] dd', /misread the code/),
  ],
  [
    'find those words on the page',
    [press(/^“1987” on the page$/)],
    async () => {
      await listing.waitForFunction(() => getSelection()?.toString() === '1987');
      return true;
    },
  ],
  ['see the photo that it rests on', [press('Photo 5')], () => inSight('.by-hand h3', /photo 5/)],
  ['go back from the photo', [press('Close')], async () => (await panel.locator('.by-hand').count()) === 0],
  [
    'type the code as one sees it',
    [open('Correct it by hand'), type('KV0985')],
    () => inSight('.answer h2', /The code that you typed reads/),
  ],
  ['take the typed code back', [press('Remove KV0985')], () => inSight('.answer h2', /The stamp in photo 5 reads/)],
  [
    'leave a question out of the message',
    [press('In the message')],
    async () =>
      (await panel.getByRole('button', { name: 'In the message' }).first().getAttribute('aria-pressed')) === 'false',
  ],
  [
    'see the message as it will go',
    [press('Look at the message')],
    () => inSight('details[data-part="message"] summary', /Message to the seller/),
  ],
  ['keep the case', [press('Keep')], () => inSight('.save-bar', /Kept\./)],
];

it('a full case is at most 1,400 pixels long at 400, with everything folded that is not needed first', async () => {
  expect(await panel.evaluate(() => document.querySelector('main')?.scrollHeight)).toBeLessThanOrEqual(1400);
});

it('ten tasks of a buyer take at most three actions each, and what they ask for is in sight', async () => {
  const played: Record<string, string | number>[] = [];
  for (const [task, actions, done] of tasks) {
    const from = await panel.evaluate(() => scrollY);
    for (const act of actions) await act();
    expect(await done(), task).toBe(true);
    const scrolled = Math.abs((await panel.evaluate(() => scrollY)) - from);
    played.push({ task, actions: actions.length, 'pixels scrolled': scrolled });
    expect(actions.length, task).toBeLessThanOrEqual(mostActions);
  }
  expect(played.length).toBeGreaterThanOrEqual(10);
  console.table(played);
});
