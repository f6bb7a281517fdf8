import { describe, expect, it } from 'vitest';
import { photosOffered } from '../../../src/check/photos-offered';
import { facts, said, withPhotos } from './sample';

describe('photos-offered', () => {
  it('misses photos', () => {
    expect(said(photosOffered, facts({ listing: withPhotos(0) }))).toEqual([
      'gap: The page offers no photo of the piece.',
    ]);
  });
  it('is silent with one, read or not', () => {
    expect(said(photosOffered, facts({ photos: [] }))).toEqual(['silent']);
  });
});
