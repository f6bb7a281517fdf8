import { describe, expect, it } from 'vitest';
import { photoWatermark } from '../../../src/check/photo-watermark';
import { facts, readPhoto, said, unreadPhoto } from './sample';

describe('photo-watermark', () => {
  const printed = (...lines: string[]) => facts({ photos: [readPhoto('p1', { printed: lines })] });
  it('doubts the address of another site', () => {
    expect(said(photoWatermark, printed('www.cellar-finds.example'))).toEqual([
      'doubt: Photo 1 carries the address “cellar-finds.example”, which is not this marketplace.',
    ]);
  });
  it("is silent on the marketplace's own address and on the maker's", () => {
    expect(said(photoWatermark, printed('photos.attic-arcade.example'))).toEqual(['silent']);
    expect(said(photoWatermark, printed('www.ondrasse.example'))).toEqual(['silent']);
    expect(said(photoWatermark, printed('MADE IN BELGIUM'))).toEqual(['silent']);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(photoWatermark, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
