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

/**
 * The same tasks on the panel before its answer came first, measured in the same window on the same listing: actions, and
 * pixels to scroll until what is asked for is in sight; null where the panel could not do it.
 */
const before: Readonly<Record<string, readonly [actions: number, pixels: number] | null>> = {
  'see what the stamp says beside what the listing says': [0, 464],
  'see what speaks against it, what is open and what was not looked at': [0, 0],
  'see why that is against the listing, with its ordinary reason': [1, 45],
  'find those words on the page': null,
  'see the photo that it rests on': [1, 2041],
  'go back from the photo': [1, 434],
  'type the code as one sees it': [2, 1155],
  'take the typed code back': [1, 0],
  'leave a question out of the message': null,
  'see the message as it will go': null,
  'keep the case': [1, 0],
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

/** What has the keyboard's focus, by the name that it is read out with. */
const focused = () =>
  panel.evaluate(() => {
    const at = document.activeElement as HTMLElement | null;
    const labelled = at instanceof HTMLInputElement ? at.labels?.[0]?.textContent : null;
    return (at?.getAttribute('aria-label') ?? labelled ?? at?.textContent ?? '').replace(/\s+/g, ' ').trim();
  });

it('the keyboard goes through the panel as the eye does, and every step of the way is made with it', async () => {
  await panel.bringToFront();
  await panel.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  const order = [
    /^Read again$/,
    /^Correct it by hand$/,
    /^The stamp in photo 5 reads KV0978/,
    /^5 photos for 7 parts/,
    /^Who made it/,
    /^Look at the message$/,
    /^What speaks against it$/,
    /^The stamp in photo 5 reads KV0978.*Both cannot be true\.$/,
    /^“1987” on the page$/,
    /^Photo 5$/,
    /^In the message$/,
    /^How sure is this\?$/,
    /^Set aside: The stamp in photo 5/,
    /^What is still open$/,
    /^What was not looked at$/,
    /^When it was made$/,
    /^What fits$/,
    /^Photos$/,
    /^What the listing claims$/,
    /^Message to the seller$/,
    /^Keep$/,
    /^Watch list$/,
  ];
  for (const name of order) {
    await panel.keyboard.press('Tab');
    expect(await focused()).toMatch(name);
  }
  const go = async (name: RegExp, key: 'Tab' | 'Shift+Tab') => {
    for (let step = 0; step < 40 && !name.test(await focused()); step += 1) await panel.keyboard.press(key);
    expect(await focused()).toMatch(name);
  };
  // From the answer to what it rests on.
  await go(/^The stamp in photo 5 reads KV0978: July 1998, Belgium/, 'Shift+Tab');
  await go(/^Look at the message$/, 'Shift+Tab');
  await go(/^The stamp in photo 5 reads KV0978: July 1998, Belgium/, 'Shift+Tab');
  await panel.keyboard.press('Enter');
  expect(await focused()).toBe('What speaks against it');
  // The code in the place where it stands, and back.
  await go(/^Correct it by hand$/, 'Shift+Tab');
  await panel.keyboard.press('Enter');
  await panel.keyboard.press('Tab');
  expect(await focused()).toBe('Type the code as you see it');
  await panel.keyboard.type('KV0985');
  await panel.keyboard.press('Enter');
  await panel.locator('.answer h2', { hasText: 'The code that you typed reads' }).waitFor();
  await go(/^Remove KV0985$/, 'Shift+Tab');
  await panel.keyboard.press('Enter');
  await panel.locator('.answer h2', { hasText: 'The stamp in photo 5 reads' }).waitFor();
  // A finding set aside, and taken back.
  await go(/^Set aside: The stamp in photo 5/, 'Tab');
  await panel.keyboard.press('Enter');
  await panel.keyboard.type('The seller told me.');
  await panel.keyboard.press('Enter');
  await panel.locator('details[data-part="set-aside"]').waitFor();
  await go(/^Set aside by you$/, 'Tab');
  await panel.keyboard.press('Enter');
  await panel.keyboard.press('Tab');
  expect(await focused()).toMatch(/^Undo setting aside/);
  await panel.keyboard.press('Enter');
  await panel.locator('details[data-check="code-against-claimed-date"]').waitFor();
  // The message: seen, a question left out and taken in again.
  await go(/^Look at the message$/, 'Shift+Tab');
  await panel.keyboard.press('Enter');
  expect(await focused()).toBe('Message to the seller');
  await panel.keyboard.press('Tab');
  const first = panel.locator('.questions input[type=checkbox]').first();
  await panel.keyboard.press('Space');
  expect(await first.isChecked()).toBe(false);
  await panel.keyboard.press('Space');
  expect(await first.isChecked()).toBe(true);
  await go(/^Copy the message$/, 'Tab');
  await panel.evaluate(() => {
    for (const folded of document.querySelectorAll('details[data-part="message"], .correct')) {
      (folded as HTMLDetailsElement).open = false;
    }
    scrollTo(0, 0);
  });
});

it('ten tasks of a buyer take at most three actions each, and what they ask for is in sight', async () => {
  const played: Record<string, string | number>[] = [];
  for (const [task, actions, done] of tasks) {
    const from = await panel.evaluate(() => scrollY);
    for (const act of actions) await act();
    expect(await done(), task).toBe(true);
    const scrolled = Math.abs((await panel.evaluate(() => scrollY)) - from);
    const [actionsBefore, pixelsBefore] = before[task] ?? ['–', '–'];
    played.push({
      task,
      actions: actions.length,
      'actions before': actionsBefore,
      // The panel scrolls there by itself; before, a hand did.
      'pixels scrolled': scrolled,
      'pixels before': pixelsBefore,
    });
    expect(actions.length, task).toBeLessThanOrEqual(mostActions);
  }
  expect(played.map(({ task }) => task)).toEqual(Object.keys(before));
  console.table(played);
});
