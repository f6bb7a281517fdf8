import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { largePage } from '../listing-pages/large-page';
import { openReadingBrowser, type ReadingBrowser } from './reading-browser';

const frameMs = 1000 / 60;

describe('a page of 1 MB and 20,000 nodes', () => {
  let browser: ReadingBrowser;
  beforeAll(async () => {
    browser = await openReadingBrowser('/nowhere');
  });
  afterAll(() => browser?.close());

  it('never loses more than two animation frames at a stretch', async () => {
    const { listing, longestTaskMs } = await browser.read('large.html', largePage(), true);
    expect(listing.price[0]?.value.minor).toBe(54000);
    expect(listing.photos).toHaveLength(12);
    expect(longestTaskMs).toBeGreaterThan(0);
    expect(longestTaskMs).toBeLessThan(2 * frameMs);
  });
});
