import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Case, caseSchema } from '../../src/case';
import { type Market, startMarket } from '../market/server';
import { type Browser, launch, openTab } from './launch';
import { mismatches, type Truth } from './truth';

const root = fileURLToPath(new URL('../../', import.meta.url));
const truth = JSON.parse(readFileSync(join(root, 'tests/market/truth.json'), 'utf8')) as { listings: Truth[] };
const folder = mkdtempSync(join(tmpdir(), 'saved-'));
const run = promisify(execFile);

let market: Market;
let browser: Browser;
beforeAll(async () => {
  market = await startMarket();
  browser = await launch();
});
afterAll(async () => {
  await browser?.close();
  await market?.close();
});

/** The case of a page as a buyer saves it: what the browser shows, after its scripts have run. */
async function checkSaved(page: string): Promise<Case> {
  const tab = await openTab(browser, market.url + page);
  await tab.page.locator('h1').waitFor();
  const file = join(folder, `${page.replace(/\W+/g, '-')}.html`);
  writeFileSync(file, await tab.page.content());
  await tab.page.close();
  const command = ['--import', 'tsx', 'src/cli/check.ts', '--json', file, '--url', market.url + page];
  const { stdout } = await run(process.execPath, [...command, '--photos', 'tests/market/site/photos'], {
    cwd: root,
    maxBuffer: 1e8,
  });
  return caseSchema.parse(JSON.parse(stdout));
}

describe('npm run check on every demo listing as saved', () => {
  it.each(truth.listings)('$page: $title', async (listing) => {
    const found = await checkSaved(listing.page);
    const shown = {
      title: found.listing.title[0]?.value ?? '',
      codes: found.decodings.filter(({ accepted }) => accepted).map(({ code }) => code),
      findings: found.outcomes.flatMap((outcome) => (outcome.outcome === 'speaks' ? outcome.findings : [])),
    };
    expect(mismatches(listing, shown), JSON.stringify(found.outcomes, null, 1)).toEqual([]);
    expect(found.listing.photos.length).toBe(listing.photos);
  });
});
