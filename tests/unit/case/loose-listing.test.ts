import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { answerOf, buildCase, correct, demoListing, isLoose, looseListing, typedCode } from '../../../src/case';
import { readSavedPage } from '../../../src/cli/saved-page';
import { type Listing, listingSchema } from '../../../src/listing/types';
import { builtInMakers, makersFor } from '../../../src/maker';

const now = '2026-01-15T10:00:00Z';
const typed = (code: string, maker: string, makers = builtInMakers) =>
  answerOf(
    buildCase({
      listing: looseListing({ maker, photos: [], readAt: now }),
      photos: [],
      corrections: correct([], typedCode(code, null)),
      makers,
      now,
    }),
  ).stamp;

describe('a code without a listing', () => {
  it('is told by its form where no file is here', () => {
    const stamp = typed('KV0978', '', []);
    expect(stamp.kind).toBe('unexplained');
    expect(stamp.kind === 'unexplained' && stamp.forms.length).toBeGreaterThan(1);
  });

  it('is read by every file that is here where nobody knows the maker, and by one where it is named', () => {
    expect(typed('KV0978', '')).toMatchObject({ kind: 'reads', reading: { system: { maker: 'Ondrasse' } } });
    expect(typed('KV0978', 'Tessaro Vell')).toMatchObject({ kind: 'unexplained' });
  });
});

describe('listings that no page gave', () => {
  it('are whole listings', () => {
    const loose = looseListing({ maker: 'Ondrasse', photos: ['a', 'b'], readAt: now });
    for (const listing of [loose, demoListing(now)]) expect(listingSchema.parse(listing)).toEqual(listing);
    expect(isLoose(loose)).toBe(true);
    expect(isLoose(demoListing(now))).toBe(false);
  });

  it('of the demonstration say what is read of its page', async () => {
    const page = fileURLToPath(new URL('../../market/site/ondrasse-carryall-25-1987.html', import.meta.url));
    const read = await readSavedPage(page, demoListing(now).url, now);
    if (!read.ok) throw new Error(read.problem.code);
    const said = ({ title, description, maker, price, measures, condition, returns, seller }: Listing) =>
      [title, description, maker, price, measures, condition, returns, ...Object.values(seller)].map((field) =>
        field.map(({ value }) => value),
      );
    expect(said(demoListing(now))).toEqual(said(read.value));
  });

  it('of the demonstration: the invented makers speak of the made-up one, and of nothing that is brought by hand', () => {
    expect(makersFor(demoListing(now).url, [])).toEqual(builtInMakers);
    expect(makersFor(looseListing({ maker: '', photos: [], readAt: now }).url, [])).toEqual([]);
  });
});
