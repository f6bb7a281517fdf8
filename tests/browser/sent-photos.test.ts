import { mkdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { overTheEdge, violations } from './axe';
import { type Browser, launch, openPanel, openTab } from './launch';

/** A listing without a photo: whatever is read of one was sent. */
const listing = `<!doctype html><html lang="en"><head><title>Carryall</title><script type="application/ld+json">
{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Carryall 30","brand":"Ondrasse",
"description":"Made in 1995, made in Belgium.",
"offers":{"@type":"Offer","price":"540.00","priceCurrency":"EUR"}}
</script></head><body><main><h1>Ondrasse Carryall 30</h1><p>€540.00</p><p>Made in 1995, made in Belgium.</p></main></body></html>`;

const photo = (name: string) => readFileSync(new URL(`../photos/stamps/${name}`, import.meta.url));
const pictures = process.env.SENT_PICTURES;

let market: Market;
let browser: Browser;
let panel: Page;
beforeAll(async () => {
  market = await startMarket();
  market.make('piece.html', { type: 'text/html', body: listing });
  browser = await launch({ hosts: ['http://127.0.0.1/*'] });
  const { tabId } = await openTab(browser, `${market.url}piece.html`);
  panel = await openPanel(browser, tabId);
  await panel.getByText('Page read.').waitFor({ timeout: 60_000 });
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** Lets go of a file over the page, as a mouse does. */
const drop = (page: Page, bytes: Buffer) =>
  page.evaluate((base64) => {
    const dropped = new DataTransfer();
    const file = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
    dropped.items.add(new File([file], 'chat.jpg', { type: 'image/jpeg' }));
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer: dropped, bubbles: true, cancelable: true }));
  }, bytes.toString('base64'));

async function keepsToItsRules(page: Page, name: string): Promise<void> {
  expect(await violations(page)).toEqual([]);
  for (const width of [320, 400, 600, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    // The bench fits its photo into the new width with the next frame.
    await expect.poll(() => overTheEdge(page)).toEqual([]);
    if (!pictures) continue;
    mkdirSync(pictures, { recursive: true });
    await page.screenshot({ path: `${pictures}/${name}-${width}.png`, fullPage: true });
  }
  await page.setViewportSize({ width: 400, height: 900 });
}

describe('photos that the seller sent', () => {
  it('are dropped on the panel, read and decoded, and say where they came from', async () => {
    await panel.locator('[data-part=photos] summary').first().click();
    await panel.getByText('Add photos that were sent to you').click();
    await drop(panel, photo('clear-01.jpg'));
    await panel.locator('.photo-strip li').filter({ hasText: 'sent by the seller in a chat' }).waitFor();
    await panel.locator('.photo-strip li').filter({ hasText: 'shows a stamp' }).waitFor({ timeout: 120_000 });
    expect(market.asked.filter((path) => !/piece|favicon/.test(path))).toEqual([]);
    await keepsToItsRules(panel, 'panel');
  }, 180_000);

  it('are said to show parts of the piece, by one key each', async () => {
    const photo = panel.getByRole('button', { name: 'Look at photo 1 by hand' });
    await photo.focus();
    await panel.keyboard.press('7');
    const item = panel.locator('.photo-strip li').filter({ hasText: 'shows the inside' });
    await item.waitFor();
    await photo.click();
    const stamp = panel.locator('[data-part-tag=stamp]');
    await panel.keyboard.press('0');
    await expect.poll(() => stamp.getAttribute('aria-pressed')).toBe('true');
    await keepsToItsRules(panel, 'tags');
    await stamp.click();
    await expect.poll(() => stamp.getAttribute('aria-pressed')).toBe('false');
  }, 60_000);

  it('lie on the bench as any other photo', async () => {
    await panel.getByRole('button', { name: 'Measure on this photo' }).click();
    await panel.locator('.bench-stage').waitFor();
    await panel.getByRole('button', { name: 'Back to reading' }).click();
  });

  it('are kept with the case, take more there, and stand in its dossier', async () => {
    await panel.getByRole('button', { name: 'Keep', exact: true }).click();
    await panel.getByText('Kept.').waitFor();
    const arrives = browser.context.waitForEvent('page');
    await panel.getByRole('button', { name: 'Open the kept case' }).click();
    const kept = await arrives;
    const sent = kept.locator('.sent-photos li');
    await sent.filter({ hasText: 'sent by the seller in a chat' }).waitFor();
    await kept.getByText('Add photos that were sent to you').click();
    await kept.getByLabel('Where they come from').selectOption('own');
    await kept.locator('input[type=file]').setInputFiles({
      name: 'mine.jpg',
      mimeType: 'image/jpeg',
      // As a phone writes it.
      buffer: await sharp(photo('clear-02.jpg'))
        .withExif({ IFD0: { Model: 'Pellevoir P 30' }, IFD2: { DateTimeOriginal: '2025:03:04 10:11:12' } })
        .jpeg()
        .toBuffer(),
    });
    await sent.filter({ hasText: 'taken by you' }).waitFor({ timeout: 120_000 });
    await kept.getByRole('button', { name: 'Open photo 1 at its own size' }).click();
    const own = kept.locator('.own-size .bench-photo');
    await own.waitFor();
    const { width, height } = await sharp(photo('clear-01.jpg')).metadata();
    expect(await own.evaluate((picture: HTMLImageElement) => [picture.naturalWidth, picture.naturalHeight])).toEqual([
      width,
      height,
    ]);
    await expect
      .poll(() => kept.locator('.bench-stage').evaluate((stage) => stage === document.activeElement))
      .toBe(true);
    await keepsToItsRules(kept, 'own-size');
    await kept.getByRole('button', { name: 'Close the photo' }).click();
    await keepsToItsRules(kept, 'case');
    await kept.getByRole('link', { name: 'Dossier' }).click();
    await kept.getByRole('heading', { name: 'Photos that were sent' }).waitFor();
    expect(await kept.locator('.sent-photos img').count()).toBe(2);
    await kept.getByText('taken on 4 March 2025, as the file says').waitFor();
    await keepsToItsRules(kept, 'dossier');
    await kept.close();
  }, 240_000);

  it('come back when the listing is read again', async () => {
    const { tabId } = await openTab(browser, `${market.url}piece.html?utm_source=mail`);
    const later = await openPanel(browser, tabId);
    await later.locator('p[data-stage=done]', { hasText: 'Page and 2 photos read.' }).waitFor({ timeout: 60_000 });
    await later.locator('[data-part=photos] summary').first().click();
    await later.locator('.photo-strip li').filter({ hasText: 'taken by you' }).waitFor({ timeout: 60_000 });
    expect(await later.locator('.photo-strip li').count()).toBe(2);
    await later.getByText('shows a stamp').first().waitFor();
    // Kept whole, it lies on the bench as before.
    await later.getByRole('button', { name: 'Look at photo 1 by hand' }).click();
    await later.getByRole('button', { name: 'Measure on this photo' }).click();
    await later.locator('.bench-stage').waitFor();
  }, 120_000);
});
