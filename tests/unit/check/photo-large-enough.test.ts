import { describe, expect, it } from 'vitest';
import { photoLargeEnough } from '../../../src/check/photo-large-enough';
import { facts, readPhoto, said, unreadPhoto } from './sample';

describe('photo-large-enough', () => {
  const sized = (width: number, height: number) => facts({ photos: [readPhoto('p1', { width, height })] });
  it('misses photos of any size', () => {
    expect(said(photoLargeEnough, sized(320, 240))).toEqual(['gap: The largest photo is 320 pixels long.']);
  });
  it('is silent with one large photo', () => {
    expect(said(photoLargeEnough, sized(900, 1200))).toEqual(['silent']);
  });
  it('cannot tell while a photo is unread that may be larger', () => {
    const given = facts({ photos: [readPhoto('p1', { width: 320, height: 240 }), unreadPhoto('p2')] });
    expect(said(photoLargeEnough, given)).toEqual(['cannot-tell: 1 of 2 photos not read']);
  });
});
