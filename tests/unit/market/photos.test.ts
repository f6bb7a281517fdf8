import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { greyOf } from '../../../src/photo';
import { type PhotoSpec, photograph } from '../../market/photo-renderer/photograph';
import { photoSpecs } from '../../market/photo-specs';

const site = new URL('../../market/site/', import.meta.url).pathname;
const photos = readdirSync(join(site, 'photos'));

describe('the demo marketplace’s photographs', () => {
  it('are those of the list, no more and no fewer', () => {
    expect([...photos].sort()).toEqual(photoSpecs.map(({ file }) => file).sort());
  });

  it('are all there that the pages show', () => {
    const pages = readdirSync(site).filter((file) => /\.(html|js)$/.test(file));
    const shown = pages.flatMap((page) => [
      ...readFileSync(join(site, page), 'utf8').matchAll(/photos\/([a-z0-9-]+\.jpg)/g),
    ]);
    expect(shown.length).toBeGreaterThan(40);
    expect(shown.map(([, file]) => file).filter((file) => !photos.includes(file!))).toEqual([]);
  });

  it('take at most 3 MB in all', () => {
    const bytes = photos.reduce((sum, file) => sum + statSync(join(site, 'photos', file)).size, 0);
    expect(bytes).toBeLessThanOrEqual(3_000_000);
  });
});

describe('the renderer of the photographs', () => {
  /** A stamp photograph of the list, small enough to draw in a test, with other words. */
  const small = (file: string, text: string): PhotoSpec => {
    const spec = photoSpecs.find((one) => one.file === file)!;
    const { subject } = spec;
    if (subject.kind !== 'stamp') throw new Error(`${file} shows no stamp`);
    const lines = subject.stamp.lines.map((line) => ({ ...line, text }));
    const pose = { ...spec.pose, width: 220, height: 165 };
    return { ...spec, pose, subject: { kind: 'stamp', stamp: { ...subject.stamp, lines } } };
  };
  const draw = (file: string, text: string) => greyOf(photograph(small(file, text)));

  it('draws the same photograph again, pixel by pixel', () => {
    expect(photograph(small('l2-stamp.jpg', 'KV0978'))).toEqual(photograph(small('l2-stamp.jpg', 'KV0978')));
  });

  it.each([
    ['l2-stamp.jpg', 'foil is lighter than its leather', 1],
    ['l3-stamp.jpg', 'ink is darker than its leather', -1],
    ['l1-stamp.jpg', 'a blind stamp lies darker in its leather', -1],
  ])('%s: %s, and the rest of the photograph stays', (file, _what, sign) => {
    const bare = draw(file, ' ');
    const stamped = draw(file, '8888');
    let middle = 0;
    let edge = 0;
    let edgePixels = 0;
    stamped.data.forEach((value, at) => {
      const x = at % 220;
      const y = Math.floor(at / 220);
      const change = value - bare.data[at]!;
      if (Math.abs(x - 110) < 40 && Math.abs(y - 82) < 20) middle += change;
      else if (y < 30 || y > 135) {
        edge += change;
        edgePixels++;
      }
    });
    expect(middle * sign).toBeGreaterThan(1500);
    // Only the sensor's noise differs there, and its mean is none.
    expect(Math.abs(edge / edgePixels)).toBeLessThan(0.15);
  });

  it('says which character it cannot letter', () => {
    expect(() => draw('l2-stamp.jpg', 'É')).toThrow('no glyph for "É"');
  });
});
