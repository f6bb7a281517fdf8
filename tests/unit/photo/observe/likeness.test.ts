import { readdirSync, readFileSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { prepared, samePhoto } from '../../../../src/photo';
import { changed, changes, likenessIn } from '../../../likeness/changed';

const folder = new URL('../../../market/site/photos/', import.meta.url);
const photo = (name: string) => readFileSync(new URL(name, folder));
const known = async (bytes: Buffer) => prepared((await likenessIn(bytes)) ?? '');
const fronts = readdirSync(folder).filter((name) => name.endsWith('-front.jpg'));

describe('a photo', () => {
  it.each(Object.keys(changes))('is known again: %s', async (how) => {
    let again = 0;
    for (const [seed, name] of fronts.entries()) {
      const same = samePhoto(await known(photo(name)), await known(await changed(photo(name), how, seed)));
      if (!same) continue;
      again++;
      expect(same.mirrored).toBe(how === 'mirrored');
      if (how.startsWith('cut')) expect(same.cut).toBe(true);
    }
    expect(again / fronts.length).toBeGreaterThanOrEqual(how === 'with a white border' ? 0.6 : 0.8);
  });

  it('is not taken for another one of the same scene, nor for its mirror image', async () => {
    const names = readdirSync(folder).filter((name) => /l[1-5]-(front|back|hardware)/.test(name));
    const all = await Promise.all(names.map(async (name) => ({ name, known: await known(photo(name)) })));
    const taken = all.flatMap((one, at) =>
      all.slice(0, at).flatMap((other) => (samePhoto(one.known, other.known) ? [[one.name, other.name]] : [])),
    );
    expect(taken).toEqual([]);
  });

  it('that shows next to nothing is known by nothing', async () => {
    const plain = await sharp({ create: { width: 200, height: 150, channels: 3, background: 'tan' } })
      .png()
      .toBuffer();
    expect(await likenessIn(plain)).toBeNull();
  });
});
