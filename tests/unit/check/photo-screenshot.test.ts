import { describe, expect, it } from 'vitest';
import { photoScreenshot } from '../../../src/check/photo-screenshot';
import { facts, readPhoto, said, unreadPhoto } from './sample';

describe('photo-screenshot', () => {
  const shot = (width: number, height: number, printed: string[]) =>
    facts({ photos: [readPhoto('p1', { width, height, printed })] });
  it('doubts a phone-shaped photo with a clock and a battery', () => {
    expect(said(photoScreenshot, shot(1170, 2532, ['09:41 5G 87%', 'Carryall']))).toEqual([
      'doubt: Photo 1 has the shape of a phone screen and shows “09:41 5G 87%”.',
    ]);
  });
  it('is silent on one sign alone', () => {
    expect(said(photoScreenshot, shot(1170, 2532, ['Carryall']))).toEqual(['silent']);
    expect(said(photoScreenshot, shot(1200, 900, ['09:41 5G 87%']))).toEqual(['silent']);
  });
  it('cannot tell when no photo was read', () => {
    expect(said(photoScreenshot, facts({ photos: [unreadPhoto('p1')] }))[0]).toMatch(/^cannot-tell/);
  });
});
