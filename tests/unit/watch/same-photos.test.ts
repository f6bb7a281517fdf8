import { describe, expect, it } from 'vitest';
import type { Case } from '../../../src/case';
import { observed } from '../../../src/photo';
import { photoRead } from '../../photo-read';
import { good, testBench } from './open-for-test';
import { sampleCase } from './sample-case';

const digits = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
/** A likeness as a photo with waves of its own has it. */
const likeness = (seed: number, mirrored = false): string =>
  Array.from({ length: 1024 }, (_, at) => {
    const x = mirrored ? 31 - (at % 32) : at % 32;
    const y = Math.floor(at / 32);
    const waves = Math.sin(x * (0.5 + seed / 7) + y * 0.3) + Math.sin(y * (0.4 + seed / 9) - x * 0.2 * seed);
    return digits[Math.floor(((waves + 2) / 4) * 63.9)];
  }).join('');

const picture = 'data:image/webp;base64,AAAA';
function caseWith(url: string, title: string, likenesses: readonly string[]): Case {
  const kase = sampleCase(url, title);
  const ids = likenesses.map((_, at) => `p${at + 1}`);
  const link = { alternatives: [], width: null, height: null, alt: '', origins: ['visible' as const] };
  return {
    ...kase,
    listing: { ...kase.listing, photos: ids.map((id) => ({ ...link, id, url: `${url}/${id}.jpg` })) },
    photos: ids.map((id, at) => {
      const read = photoRead(id);
      return { ...read, observations: [...read.observations, observed(id, 'likeness', likenesses[at]!)] };
    }),
  };
}

const [here, there] = ['https://attic-arcade.example/item/1', 'https://attic-arcade.example/item/2'];

describe('a photo of a kept case', () => {
  it('is found in another case, by number and with the pictures that were kept, mirrored or not', async () => {
    const list = await testBench().open();
    const own = caseWith(here, 'Carryall', [likeness(1), likeness(2)]);
    const { id } = good(await list.save(own, [{ photoId: 'p1', lineId: null, picture }]));
    const other = good(await list.save(caseWith(there, 'Carryall anew', [likeness(3), likeness(1, true)]), []));
    expect(good(await list.samePhotos(id))).toEqual([
      {
        id: other.id,
        title: 'Carryall anew',
        readAt: '2026-03-01T10:00:00.000Z',
        own: { photo: 1, picture },
        other: { photo: 2, picture: null },
        mirrored: true,
        cut: false,
      },
    ]);
    expect(good(await list.samePhotos(other.id))).toMatchObject([
      { id, own: { photo: 2 }, other: { photo: 1, picture } },
    ]);
  });

  it('is found in an earlier look of another case too, and once in each', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1)]), []));
    good(await list.save(caseWith(there, 'Other', [likeness(1)]), []));
    const later = caseWith(there, 'Other', [likeness(4)]);
    good(await list.save({ ...later, listing: { ...later.listing, readAt: '2026-03-02T10:00:00.000Z' } }, []));
    expect(good(await list.samePhotos(id))).toMatchObject([{ title: 'Other', readAt: '2026-03-01T10:00:00.000Z' }]);
  });

  it('is found in no case that was deleted, in its own, or where it was read before likenesses were kept', async () => {
    const list = await testBench().open();
    const { id } = good(await list.save(caseWith(here, 'Carryall', [likeness(1), likeness(1)]), []));
    const gone = good(await list.save(caseWith(there, 'Gone', [likeness(1)]), []));
    good(await list.remove(gone.id));
    good(await list.save(caseWith(`${there}7`, 'Before', ['not of this form']), []));
    expect(good(await list.samePhotos(id))).toEqual([]);
  });
});
