import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutWords, overTheEdge, violations } from './axe';
import { faintControls } from './forced-colours';
import { openStage, panelStates, type Stage } from './panel-states';

const widths = [280, 320, 400, 600, 1280, 1600];

/** What each state says first, so that a picture of another one is not taken for it. */
const says: Record<keyof typeof panelStates, [selector: string, words: RegExp]> = {
  reading: ['[data-stage=photos]', /^Reading photo \d, then 1 more; 1 of 3 done…$/],
  contradiction: ['.answer h2', /reads July 1998, Belgium\. The listing says 1987\./],
  sound: ['[data-line=against]', /Nothing was found in what was looked at\./],
  'no-file': ['.answer h2', /No file on Ondrasse explains it yet\./],
  copies: ['.answer h2', /read from a small copy, reads July 1998/],
  'seen-before': ['.case-answer > :first-child', /^What has changed since the saved look/],
  lot: ['.case-answer > :first-child', /^Two pieces are offered here/],
  nothing: ['main', /No listing was found on this page\./],
  'not-a-listing': ['main', /This page shows many pieces\./],
  lapsed: ['[role=alert]', /This page cannot be read yet/],
  'failed-check': ['[data-line=not-looked-at]', /A part of Tellstamp failed here/],
  offline: ['.answer h2', /The photos could not be opened\./],
};

/** As tall as what it holds: the bar that sticks to the window's end lies over no button then. */
async function wholeAt(panel: Page, width: number): Promise<void> {
  await panel.setViewportSize({ width, height: 900 });
  const height = await panel.evaluate(() => document.documentElement.scrollHeight);
  await panel.setViewportSize({ width, height });
}

/** In the usual size of text, with everything open. */
const asAtFirst = (panel: Page): Promise<void> =>
  panel.evaluate(() => {
    document.documentElement.style.fontSize = '';
    for (const folded of document.querySelectorAll('details')) folded.open = true;
  });

/** A language is chosen for all screens; they take it on as they stand. */
async function speak(panel: Page, language: string): Promise<void> {
  await panel.evaluate((chosen) => chrome.storage.local.set({ 'screen-language': chosen }), language);
  await panel.waitForFunction((chosen) => document.documentElement.lang === chosen, language);
}

let stage: Stage;
beforeAll(async () => {
  stage = await openStage();
});
afterAll(() => stage?.close());

it('what looks at forced colours and at cut words sees a control without an edge, and words that are cut', async () => {
  const page = await stage.browser.context.newPage();
  await page.setContent(`<style>button, a { border: 0; outline: 0; text-decoration: none }</style>
    <button aria-pressed="true">One</button><button aria-pressed="false">Two</button><a href="#x">Three</a>
    <p style="width: 3em; overflow: hidden; white-space: nowrap">Words that are longer than their box</p>`);
  const outline = 'an outline when it has the focus';
  expect((await faintControls(page)).map(({ lacks }) => lacks)).toEqual([
    'a border',
    outline,
    'a sign that it is pressed, but colour',
    'a border',
    outline,
    'a line under it',
    outline,
  ]);
  expect(await cutWords(page)).toEqual(['p. Words that are longer than their box']);
  await page.close();
});

describe.each(Object.keys(panelStates) as (keyof typeof panelStates)[])('the panel, %s', (state) => {
  let panel: Page;
  beforeAll(async () => {
    panel = await panelStates[state](stage);
  }, 400_000);
  afterAll(() => panel?.close());

  it('says what is so, has nothing against WCAG 2.2 AA that axe-core finds, and stands over no edge', async () => {
    const [selector, words] = says[state];
    expect(await panel.locator(selector).first().textContent()).toMatch(words);
    for (const width of widths) {
      await panel.setViewportSize({ width, height: 900 });
      expect(await overTheEdge(panel), `at ${width}`).toEqual([]);
    }
    await panel.evaluate(() => {
      for (const folded of document.querySelectorAll('details')) folded.open = true;
    });
    for (const [colorScheme, width] of [
      ['light', 320],
      ['dark', 1280],
    ] as const) {
      await panel.emulateMedia({ colorScheme });
      await wholeAt(panel, width);
      expect(await violations(panel), `${colorScheme} at ${width}`).toEqual([]);
    }
    // Words of twice the size run nowhere out of sight.
    await panel.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    for (const width of [400, 1280]) {
      await panel.setViewportSize({ width, height: 900 });
      expect(await overTheEdge(panel), `twice the size at ${width}`).toEqual([]);
    }
  });

  it('keeps its controls, their focus and what is pressed in forced colours', async () => {
    await asAtFirst(panel);
    await panel.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
    for (const width of [320, 1280]) {
      await wholeAt(panel, width);
      expect(await faintControls(panel), `at ${width}`).toEqual([]);
      expect(await violations(panel), `at ${width}`).toEqual([]);
    }
    await panel.emulateMedia({ forcedColors: 'none' });
  });

  it('holds words of nearly half more letters, and cuts none of them off', async () => {
    await asAtFirst(panel);
    await speak(panel, 'en-XA');
    for (const width of [280, 400, 1280]) {
      await panel.setViewportSize({ width, height: 900 });
      expect(await overTheEdge(panel), `at ${width}`).toEqual([]);
      expect(await cutWords(panel), `at ${width}`).toEqual([]);
    }
    await speak(panel, 'en');
  });
});
