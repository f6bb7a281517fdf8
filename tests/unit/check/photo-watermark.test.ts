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
  it('is silent on a site that the marketplace is a part of, and not on one whose name only begins alike', () => {
    const on = (url: string, ...lines: string[]) => ({ ...printed(...lines), listing: { ...facts().listing, url } });
    const part = 'https://shop.harbour.example/item/1';
    expect(said(photoWatermark, on(part, 'harbour.example'))).toEqual(['silent']);
    expect(said(photoWatermark, on('https://harbour.example/item/1', 'harbour.example.cellar.example'))[0]).toMatch(
      /^doubt/,
    );
    expect(said(photoWatermark, on('https://myharbour.example/item/1', 'harbour.example'))[0]).toMatch(/^doubt/);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(photoWatermark, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
