import { expect, it } from 'vitest';
import { realPhotos } from '../measure/real/photos';

it('real photographs for the measures are listed once each, with their licence, and a third of those counted on is set aside', () => {
  const photos = realPhotos();
  expect(photos.length).toBeGreaterThanOrEqual(60);
  expect(new Set(photos.map(({ sha256 }) => sha256)).size).toBe(photos.length);
  expect(photos.filter(({ licence }) => licence === '')).toEqual([]);
  const counted = photos.filter(({ rows }) => rows.length > 0);
  expect(counted.filter(({ aside }) => aside).length / counted.length).toBeGreaterThanOrEqual(1 / 3);
});
