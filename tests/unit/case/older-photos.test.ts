import { describe, expect, it } from 'vitest';
import { liftPhotoRead } from '../../../src/case/older-photo-types';
import { isTooWeakRead, printedIn, valueIn } from '../../../src/photo';
import { stampLinesOf } from '../../../src/stamp';
import { photoReadSchema } from '../../../src/stamp/types';
import { photoRead } from '../../photo-read';
import { stampLine } from '../check/sample';

const came = { way: 'capture', fullSize: false, part: false, largest: { width: 1600, height: 1200 } };
/** As cases kept a photo before its reading was a list of observations. */
const older = {
  state: 'read',
  photoId: 'p1',
  width: 1170,
  height: 2532,
  lines: [stampLine('p1', 'KV0915', { mayGoOn: true })],
  printed: ['09:41 5G 87%', 'www.cellar-finds.example'],
  hash: 'f0e1d2c3b4a59687',
  tooWeak: true,
  background: { lightness: 255, spread: 0, noise: 0.1 },
  came,
};

describe('a reading kept before observations', () => {
  it('opens with everything that it said', () => {
    const read = photoReadSchema.parse(liftPhotoRead(older));
    expect(read).toMatchObject({ state: 'read', photoId: 'p1', width: 1170, height: 2532, came });
    expect(stampLinesOf(read)).toEqual(older.lines);
    expect(printedIn(read)).toEqual(older.printed);
    expect(valueIn(read, 'hash')).toBe(older.hash);
    expect(isTooWeakRead(read)).toBe(true);
    expect(['lightness', 'spread', 'noise'].map((name) => valueIn(read, `ground-${name}`))).toEqual([255, 0, 0.1]);
    expect([valueIn(read, 'longer-side'), valueIn(read, 'screen-bars'), valueIn(read, 'watermark')]).toEqual([
      2532,
      '09:41 5G 87%',
      'cellar-finds.example',
    ]);
  });

  it('opens without a ground, which was not always measured', () => {
    const { background: _, came: __, ...bare } = older;
    expect(valueIn(photoReadSchema.parse(liftPhotoRead(bare)), 'ground-noise')).toBeNull();
  });

  it('is lifted once: what it becomes is left as it is', () => {
    const lifted = liftPhotoRead(older);
    expect(liftPhotoRead(lifted)).toBe(lifted);
    const today = photoRead('p1', { lines: [stampLine('p1', 'KV0915')] });
    expect(photoReadSchema.parse(liftPhotoRead(today))).toEqual(today);
  });

  it.each([
    ['lines that are none', { lines: ['KV0915'] }],
    ['a line with a field too many', { lines: [{ ...stampLine('p1', 'KV0915'), colour: 'gold' }] }],
    ['print that is no text', { printed: [1] }],
    ['a missing hash', { hash: undefined }],
    ['a field too many', { size: 3 }],
  ])('is refused with %s', (_name, part) => {
    expect(photoReadSchema.safeParse(liftPhotoRead({ ...older, ...part })).success).toBe(false);
  });

  it("refuses a stamped line whose details are not the reader's", () => {
    const read = photoRead('p1', { lines: [stampLine('p1', 'KV0915')] });
    const observations = read.observations.map(({ detail, ...rest }) => ({
      ...rest,
      detail: { ...Object(detail), a: 1 },
    }));
    const refused = photoReadSchema.safeParse(liftPhotoRead({ ...read, observations }));
    expect(refused.error?.issues.map(({ path }) => path.join('.'))).toEqual(['observations.0.detail']);
  });
});
