import { describe, expect, it } from 'vitest';
import { photoStockLike } from '../../../src/check/photo-stock-like';
import { facts, onlyFinding, readPhoto, said, unreadPhoto, withPhotos } from './sample';

const even = { lightness: 255, spread: 0, noise: 0 };
const sheet = { lightness: 238, spread: 14, noise: 1.4 };
const shown = (...backgrounds: (typeof even | undefined)[]) =>
  facts({
    listing: withPhotos(backgrounds.length),
    photos: backgrounds.map((background, index) => readPhoto(`p${index + 1}`, background ? { background } : {})),
  });

describe('photo-stock-like', () => {
  it('doubts photos on an even white ground, all in one finding', () => {
    expect(said(photoStockLike, shown(even, sheet))).toEqual([
      'doubt: Photo 1 stands on an even white ground without the grain of a camera.',
    ]);
    const finding = onlyFinding(photoStockLike, shown(even, sheet, { lightness: 240, spread: 2, noise: 0.1 }));
    expect(finding.statement).toBe('Photo 1 and photo 3 stand on an even white ground without the grain of a camera.');
    expect(finding.photos).toEqual(['p1', 'p3']);
    expect(finding.asks.map(({ topic }) => topic)).toEqual(['own-photo']);
  });

  it.each([
    ['shade across the ground', { ...even, spread: 12 }],
    ['the noise of a sensor', { ...even, noise: 0.9 }],
    ['a grey ground', { ...even, lightness: 190 }],
    ['a white sheet at home', sheet],
  ])('is silent on %s', (_name, background) => {
    expect(said(photoStockLike, shown(background))).toEqual(['silent']);
  });

  it('is silent on a scanned receipt', () => {
    const printed = ['Harbour Attic', 'Carryall 30', '12 May 1995', '380,00'];
    expect(said(photoStockLike, facts({ photos: [readPhoto('p1', { background: even, printed })] }))).toEqual([
      'silent',
    ]);
  });

  it('cannot tell when nothing was measured or no photo was read', () => {
    expect(said(photoStockLike, shown(undefined))[0]).toMatch(/^cannot-tell: the ground/);
    expect(said(photoStockLike, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
