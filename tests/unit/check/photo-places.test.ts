import { expect, test } from 'vitest';
import { photoNumber, photoNumberer, whyUnread } from '../../../src/check/photo-places';
import { readPhoto, unreadPhoto, withPhotos } from './sample';

test('a photo is named by its place on the page, from 1, and not at all where the page does not list it', () => {
  const listing = withPhotos(3);
  expect(['p1', 'p2', 'p3', 'elsewhere'].map((id) => photoNumber(listing, id))).toEqual([1, 2, 3, null]);
  expect(['p1', 'p2', 'p3', 'elsewhere'].map(photoNumberer(listing))).toEqual([1, 2, 3, null]);
});

test('why photos were not read: none are there, or how many of how many, and the first cause', () => {
  expect(whyUnread([])).toMatchObject({ reason: 'no-photos' });
  expect(whyUnread([readPhoto('p1'), unreadPhoto('p2'), unreadPhoto('p3')])).toMatchObject({
    reason: 'photos-not-read',
    data: { unread: 2, of: 3, cause: { code: 'photo-not-image' } },
  });
  expect(whyUnread([readPhoto('p1')])).toMatchObject({ data: { unread: 0, of: 1, cause: null } });
});
