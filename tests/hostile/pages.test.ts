import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { listingSchema } from '../../src/listing/types';
import { answerTo, type Expectation } from './expectation';
import { openReadingBrowser, type ReadingBrowser } from './reading-browser';

const folder = fileURLToPath(new URL('pages', import.meta.url));
const table = JSON.parse(readFileSync(new URL('expected.json', import.meta.url), 'utf8')) as Record<
  string,
  Expectation
>;

/** The 40 ugly pages, read by a content script of a real Chromium. */
describe('hostile pages', () => {
  let browser: ReadingBrowser;
  beforeAll(async () => {
    browser = await openReadingBrowser(folder);
  });
  afterAll(() => browser?.close());

  it('are forty', () => expect(Object.keys(table)).toHaveLength(40));

  for (const [file, expected] of Object.entries(table))
    it(file.replace('.html', '').replaceAll('-', ' '), async () => {
      const { listing, prototypeClean } = await browser.read(file);
      expect(answerTo(expected, listing, browser.origin, prototypeClean)).toEqual(expected);
      expect(listingSchema.safeParse(listing).error).toBeUndefined();
    });
});
