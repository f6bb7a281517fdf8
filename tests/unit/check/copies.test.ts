import { describe, expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { codeShown } from '../../../src/check/code-shown';
import { photoLargeEnough } from '../../../src/check/photo-large-enough';
import { photoReused } from '../../../src/check/photo-reused';
import { photoScreenshot } from '../../../src/check/photo-screenshot';
import { photoStockLike } from '../../../src/check/photo-stock-like';
import { photoWatermark } from '../../../src/check/photo-watermark';
import { stampCloseUp } from '../../../src/check/stamp-close-up';
import { stampEvenness } from '../../../src/check/stamp-evenness';
import { stampLegible } from '../../../src/check/stamp-legible';
import type { Came } from '../../../src/photo/read-types';
import { decoded, facts, kv0915, madeIn, readPhoto, said, stampLine, withPhotos } from './sample';

const capture: Came = { way: 'capture', fullSize: false, part: false, largest: { width: 1200, height: 900 } };
const smaller: Came = { way: 'page', fullSize: false };
const whole: Came = { way: 'background', fullSize: true };
const nothing = 'which says nothing of the listing’s own';
const copied = `cannot-tell: 1 of 1 photo was read from a copy, ${nothing}`;

/** Everything that a check on photos could hold against one: small, blurred, phone-shaped, on an even ground. */
const poor = {
  width: 160,
  height: 320,
  tooWeak: true,
  background: { lightness: 255, spread: 0, noise: 0 },
  printed: ['10:24', 'add to cart'],
};

describe('a photo that was read from a copy', () => {
  it.each([
    ['a picture of the page', capture],
    ['a picture of the page at full size', { ...capture, fullSize: true }],
    ['a smaller version', smaller],
  ])('is judged by no check on size, shape, ground or sharpness: %s', (_name, came) => {
    const given = facts({ photos: [readPhoto('p1', { ...poor, came })], claims: [madeIn(1995)] });
    for (const check of [photoLargeEnough, photoScreenshot, photoStockLike, photoReused, stampCloseUp, codeShown]) {
      expect(said(check, given), check.id).toEqual([copied]);
    }
  });

  it('is judged as ever when the listing’s own file was had', () => {
    const given = facts({ photos: [readPhoto('p1', { ...poor, came: whole })] });
    expect(said(photoLargeEnough, given)).toEqual(['gap: The largest photo is 320 pixels long.']);
    expect(said(photoScreenshot, given)[0]).toMatch(/^doubt: Photo 1 has the shape of a phone screen/);
  });

  it('leaves the photos beside it judged', () => {
    const photos = [readPhoto('p1', { came: capture }), readPhoto('p2', poor)];
    expect(said(photoScreenshot, facts({ listing: withPhotos(2), photos }))[0]).toMatch(/^doubt: Photo 2/);
    const large = [readPhoto('p1', { came: capture }), readPhoto('p2')];
    expect(said(photoLargeEnough, facts({ listing: withPhotos(2), photos: large }))).toEqual(['silent']);
  });

  it('is not said to show what another shows: two copies may be of one thing that lay over both', () => {
    const photos = ['p1', 'p2'].map((id) => readPhoto(id, { came: capture, hash: '0123456789abcdef' }));
    expect(said(photoReused, facts({ listing: withPhotos(2), photos }))).toEqual([
      'cannot-tell: 2 of 2 photos were read from copies, which say nothing of the listing’s own',
    ]);
  });

  it('still says what it shows: words of another site stand in the photo too', () => {
    const given = facts({ photos: [readPhoto('p1', { came: capture, printed: ['harbour-attic.example'] })] });
    expect(said(photoWatermark, given)[0]).toMatch(/^doubt: Photo 1 carries the address/);
    expect(said(photoWatermark, facts({ photos: [readPhoto('p1', { came: capture })] }))).toEqual([copied]);
  });

  it('asks for no sharper stamp, and calls none uneven', () => {
    const line = stampLine('p1', 'KV0915', {
      measurements: [{ what: 'depth-slope', value: 2, uncertainty: 0.1, unit: 'share' }],
    });
    const photos = [readPhoto('p1', { came: capture, lines: [line] })];
    const unclear = decoded('KV0?15', [], { accepted: false });
    expect(said(stampLegible, facts({ photos, decodings: [unclear] }))).toEqual([
      'cannot-tell: the stamp was seen only in a copy of its photo',
    ]);
    expect(said(stampEvenness, facts({ photos, decodings: [kv0915] }))).toEqual([copied]);
    expect(
      said(stampEvenness, facts({ photos: [readPhoto('p1', { lines: [line] })], decodings: [kv0915] }))[0],
    ).toMatch(/^gap: The stamp in photo 1 looks uneven/);
  });

  it('makes no check ask the seller for a photo because of what the copy does not show', () => {
    const given = facts({ photos: [readPhoto('p1', { ...poor, printed: [], came: capture })] });
    const asked = checks
      .filter(({ family }) => family === 'photos')
      .flatMap((check) => {
        const outcome = check.judge(given);
        return outcome.outcome === 'speaks' ? outcome.findings.map((finding) => finding.check) : [];
      });
    // How many photos there are is known without looking at them.
    expect(asked).toEqual(['parts-shown']);
  });
});
