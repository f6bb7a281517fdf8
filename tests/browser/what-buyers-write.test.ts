import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openPanel, openTab } from './launch';
import { clickToolbar } from './toolbar';

/** A listing without photos: what is tested here is what is written and kept, and reading photos takes long. */
const listing = `<!doctype html><html lang="en"><head><title>Carryall</title><script type="application/ld+json">
{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Carryall 30","brand":"Ondrasse",
"description":"Made in 1995, made in Belgium. Date code KV0915.",
"offers":{"@type":"Offer","price":"540.00","priceCurrency":"EUR"}}
</script></head><body><main><h1>Ondrasse Carryall 30</h1><p>€540.00</p>
<p>Made in 1995, made in Belgium. Date code KV0915.</p></main></body></html>`;

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  market.make('piece.html', { type: 'text/html', body: listing });
  browser = await launch();
  await browser.context.grantPermissions(['clipboard-write']);
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

const part = (screen: Page, name: string) => screen.locator(`details[data-part="${name}"]`);
const unfold = (screen: Page, name: string) => part(screen, name).locator('> summary').click();
async function panelOf(path: string): Promise<Page> {
  const { page, tabId } = await openTab(browser, `${market.url}${path}`);
  await clickToolbar(browser, page);
  const panel = await openPanel(browser, tabId);
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached' });
  return panel;
}

it('what was asked and answered stands in the panel of a kept case and in the list, and the site’s limit is remembered', async () => {
  const panel = await panelOf('piece.html');
  // Before the case is kept there is nothing that a reply could be kept with.
  expect(await part(panel, 'replies').count()).toBe(0);
  await unfold(panel, 'message');
  const limit = part(panel, 'message').getByRole('spinbutton');
  await limit.fill('4000');
  await part(panel, 'message').getByRole('button', { name: 'Copy the message' }).click();
  await part(panel, 'message').getByText('Copied.').waitFor();
  await panel.getByRole('button', { name: 'Keep', exact: true }).click();
  await panel.getByText('Kept.').waitFor();
  await part(panel, 'message').getByText('asked on').first().waitFor();

  await panel.getByText('The seller replied? Add it here').click();
  await part(panel, 'replies').getByRole('textbox').fill('My aunt bought it in 1996. The lining is olive twill.');
  await part(panel, 'replies').getByRole('button', { name: 'Keep the reply' }).click();
  const reply = part(panel, 'replies').locator('blockquote');
  await reply.waitFor();
  expect(await reply.textContent()).toBe('My aunt bought it in 1996. The lining is olive twill.');
  // What it claims is read with what the listing says.
  await part(panel, 'claims').getByText('olive twill').first().waitFor({ state: 'attached' });

  await panel.reload();
  await panel.locator('[data-stage=done]').waitFor({ state: 'attached' });
  await unfold(panel, 'message');
  await expect.poll(() => limit.inputValue()).toBe('4000');
  await part(panel, 'message').getByText('asked on').first().waitFor();
  await part(panel, 'replies').locator('blockquote').waitFor({ state: 'attached' });

  const list = await browser.context.newPage();
  await list.goto(browser.extensionUrl('watchlist.html'));
  await list.locator('.case-row h2 a').click();
  await list.locator('.case-page .case').waitFor();
  await unfold(list, 'message');
  await expect.poll(() => part(list, 'message').getByRole('spinbutton').inputValue()).toBe('4000');
  await part(list, 'message').getByText('asked on').first().waitFor();
  await list.getByText('What the seller replied').click();
  expect(await part(list, 'replies').locator('blockquote').textContent()).toContain('My aunt bought it');
  await Promise.all([list.close(), panel.close()]);
});

it.each(['help.html', 'index.html'])(
  '%s offers no single piece, and a code is read there all the same',
  async (path) => {
    const panel = await panelOf(path);
    await panel.getByRole('textbox', { name: 'Type the code as you see it' }).fill('KV0915');
    await panel.getByLabel('Whose codes').selectOption({ label: 'Ondrasse (invented)' });
    await panel.getByRole('button', { name: 'Decode' }).click();
    await panel.getByRole('heading', { name: /reads January 1995, Belgium/ }).waitFor();
    await panel.getByRole('button', { name: 'Read a photo' }).waitFor();
    await panel.close();
  },
);
