import { describe, expect, it } from 'vitest';
import { photoReused } from '../../../src/check/photo-reused';
import { facts, readPhoto, said, unreadPhoto, withPhotos } from './sample';

describe('photo-reused', () => {
  const two = (a: string, b: string) =>
    facts({ listing: withPhotos(2), photos: [readPhoto('p1', { hash: a }), readPhoto('p2', { hash: b })] });
  it('says which photos show the same picture', () => {
    expect(said(photoReused, two('f0e1d2c3b4a59687', 'f0e1d2c3b4a59686'))).toEqual([
      'gap: Photo 1 and photo 2 show the same picture.',
    ]);
  });
  it('is silent on different and on blank pictures', () => {
    expect(said(photoReused, two('f0e1d2c3b4a59687', '0f1e2d3c4b5a6978'))).toEqual(['silent']);
    expect(said(photoReused, two('0000000000000000', '0000000000000000'))).toEqual(['silent']);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(photoReused, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
