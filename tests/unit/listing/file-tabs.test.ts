// @vitest-environment jsdom
import { expect, test } from 'vitest';
import { readListing } from '../../../src/listing';

const said = async (contentType: string) => {
  const page = new DOMParser().parseFromString('<img src="https://attic-arcade.example/1.jpg">', 'text/html');
  Object.defineProperty(page, 'contentType', { value: contentType });
  const listing = await readListing(page, { url: 'https://attic-arcade.example/1', now: '2026-01-01T00:00:00Z' });
  return [listing.kind, ...listing.problems.map(({ code }) => code), ...listing.photos.map(({ url }) => url)];
};

test('a tab that shows a file by itself is told from a page without a listing; a picture is a photo', async () => {
  expect(await said('image/jpeg')).toEqual(['none', 'page-is-picture', 'https://attic-arcade.example/1']);
  expect(await said('application/pdf')).toEqual(['none', 'page-is-pdf']);
  expect(await said('text/html')).toEqual(['none', 'no-listing']);
});
