import { describe, expect, it } from 'vitest';
import { readFacts, readPage } from '../../../src/listing';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import { corpus } from '../../listing-pages/corpus';
import { readWhole } from '../../listing-pages/reading';
import { keptReadings } from '../../listing-pages/readings';

const look =
  'if it is meant, run `npm run make:listing-readings` and look at each line of `git diff tests/listing-pages/readings`';

/** The whole of what is read: values, confidences, places, caveats, problems, photos and the signs of the page's kind. */
describe.each(Object.entries(corpus))('pages of %s', (file, pages) => {
  const kept = keptReadings(file);

  it('has a reading of every page, and of no other', () => {
    expect(Object.keys(kept)).toEqual(Object.keys(pages));
  });

  it.each(Object.entries(pages))('reads as it was looked at: %s', async (name, page) => {
    expect(await readWhole(page, { readPage, readFacts, lookBySource }), look).toEqual(kept[name]);
  });
});
