import { describe, expect, it } from 'vitest';
import { photosChanged } from '../../../src/check/photos-changed';
import type { PreviousLook } from '../../../src/check/types';
import { facts, said, withPhotos } from './sample';

describe('photos-changed', () => {
  const look = (rest: Partial<PreviousLook> = {}): PreviousLook => ({
    readAt: '2026-01-02T10:00:00Z',
    title: 'Ondrasse bag',
    price: null,
    seller: null,
    photos: [],
    claims: [],
    ...rest,
  });

  const shownBefore = (count: number) => look({ photos: withPhotos(count).photos.map(({ id, url }) => ({ id, url })) });
  it('says how many photos are gone', () => {
    expect(said(photosChanged, facts({ previous: shownBefore(4), listing: withPhotos(2) }))).toEqual([
      'doubt: 2 photos of 4 shown on 2 January 2026 are gone; 2 are left.',
    ]);
  });
  it('is silent about photos that the page made itself, whose addresses never come twice', () => {
    const photos = ['a', 'b', 'c'].map((id) => ({ id, url: `blob:https://attic-arcade.example/${id}` }));
    expect(said(photosChanged, facts({ previous: look({ photos }), listing: withPhotos(1) }))).toEqual(['silent']);
  });
  it('is silent when photos were added, or moved to another host', () => {
    expect(said(photosChanged, facts({ previous: shownBefore(2), listing: withPhotos(3) }))).toEqual(['silent']);
    const moved = withPhotos(2);
    const listing = {
      ...moved,
      photos: moved.photos.map((photo) => ({ ...photo, url: photo.url.replace('attic', 'cdn.attic') })),
    };
    expect(said(photosChanged, facts({ previous: shownBefore(2), listing }))).toEqual(['silent']);
  });
});
