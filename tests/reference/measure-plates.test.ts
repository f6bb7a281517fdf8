import { existsSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openPhotoFile } from '../../src/cli/photo-file';
import { measureMarks } from '../../src/photo';

const plates = new URL('../../../shared/fixtures/plates/', import.meta.url).pathname;
/** Lines over letters that stand as far apart as each other and are not alike. */
const lines = [
  ['br-033.jpg', 266.656, 127.881, 402.217, 118.41],
  ['br-046.jpg', 305.297, 75.18, 480.399, 53.583],
] as const;

describe.skipIf(!existsSync(plates))('photographs of number plates (fixtures/plates; skipped: not present)', () => {
  it.each(lines)('%s: letters in a row are no stitches', async (file, x0, y0, x1, y1) => {
    const opened = await openPhotoFile(plates + file);
    if (!opened.ok) throw new Error(opened.problem.code);
    const points = [
      { x: x0, y: y0 },
      { x: x1, y: y1 },
    ];
    expect(measureMarks(opened.value.image, [{ what: 'count', points }])).toMatchObject([
      { value: null, why: 'no-stitches' },
    ]);
  });
});
