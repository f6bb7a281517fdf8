import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type OpenEngines, openEngines } from '../../../src/cli/engines';
import { openPhotoFile } from '../../../src/cli/photo-file';
import { photoResult } from '../../../src/cli/stamp-result';
import { builtInMakers } from '../../../src/maker';
import { photoSpecs } from '../../market/photo-specs';

/** What is stamped in a demo photograph; null where nothing is. */
function stamped(file: string): string | null {
  const subject = photoSpecs.find((spec) => spec.file === file)?.subject;
  const lines = subject?.kind === 'stamp' ? subject.stamp.lines : [];
  return lines.map(({ text }) => text).find((text) => /\d/.test(text)) ?? null;
}

describe('the demo photographs, read by the nets as a user gets them', () => {
  let open: OpenEngines;
  beforeAll(async () => {
    open = await openEngines();
  }, 60_000);
  afterAll(() => open.close());

  const read = async (file: string) => {
    const photo = await openPhotoFile(new URL(`../../market/site/photos/${file}`, import.meta.url).pathname);
    if (!photo.ok) throw new Error(photo.problem.code);
    return photoResult(file, photo.value, open.engines, { makers: builtInMakers, maker: null, now: '2026-11-25' });
  };

  it.each(['l1', 'l2', 'l3', 'l4', 'l6', 'l7', 'l8'])(
    '%s: the stamp is read without typing',
    async (listing) => {
      const file = `${listing}-stamp.jpg`;
      const { readings } = await read(file);
      expect(readings[0]?.text).toBe(stamped(file));
    },
    30_000,
  );

  it('l9: a stamp that nobody can read is seen and not read', async () => {
    const { readings, candidates } = await read('l9-stamp.jpg');
    expect(readings).toEqual([]);
    expect(candidates?.length).toBeGreaterThan(0);
  }, 30_000);

  it.each(['l5-front.jpg', 'l5-handle.jpg', 'l1-base.jpg', 'l2-hardware.jpg', 'l3-strap.jpg', 'l4-zip.jpg'])(
    '%s: nothing is stamped and nothing is read',
    async (file) => {
      expect(stamped(file)).toBeNull();
      expect((await read(file)).readings).toEqual([]);
    },
    30_000,
  );
});
