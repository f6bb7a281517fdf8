import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readExif } from '../../../src/photo/header-exif';
import { observeFile } from '../../../src/photo/observe-file';

const plain = sharp({ create: { width: 30, height: 30, channels: 3, background: '#888' } });
/** A JPEG with these fields, written by another program. */
const written = async (camera: Record<string, string>, taken: Record<string, string> = {}) =>
  new Uint8Array(await plain.clone().withExif({ IFD0: camera, IFD2: taken }).jpeg().toBuffer());
const taken = { DateTimeOriginal: '2025:03:04 10:11:12' };

describe('what a camera wrote into a photo’s file', () => {
  it('is when it was taken, and the camera as it names itself', async () => {
    expect(readExif(await written({ Make: 'Pellevoir', Model: 'P 30' }, taken))).toEqual({
      takenAt: '2025-03-04T10:11:12',
      camera: 'Pellevoir P 30',
    });
  });

  it('names a maker once', async () => {
    const { camera } = readExif(await written({ Make: 'PELLEVOIR', Model: 'Pellevoir P 30' }))!;
    expect(camera).toBe('Pellevoir P 30');
  });

  it.each(['0000:00:00 00:00:00', '    :  :     :  :  ', '2025:13:40 10:11:12', 'yesterday'])(
    'is no moment where the clock says “%s”',
    async (DateTimeOriginal) => {
      expect(readExif(await written({ Model: 'P 30' }, { DateTimeOriginal }))).toEqual({
        takenAt: null,
        camera: 'P 30',
      });
    },
  );

  it('is found behind fill bytes and markers that stand alone', async () => {
    const file = await written({ Model: 'P 30' });
    const filled = Uint8Array.from([...file.subarray(0, 2), 0xff, 0xff, 0xff, 0x01, ...file.subarray(2)]);
    expect(readExif(filled)?.camera).toBe('P 30');
  });

  it('is nothing where a file says nothing, and where it is no JPEG', async () => {
    expect(readExif(new Uint8Array(await plain.clone().jpeg().toBuffer()))).toBeNull();
    expect(readExif(new Uint8Array(await plain.clone().png().toBuffer()))).toBeNull();
    expect(readExif(new Uint8Array())).toBeNull();
  });

  it('of a file that is cut off or spoilt anywhere never throws, and reads no longer than the file', async () => {
    const file = await written({ Make: 'Pellevoir', Model: 'P 30' }, taken);
    for (let length = 0; length < Math.min(file.length, 600); length++) readExif(file.subarray(0, length));
    fc.assert(
      fc.property(fc.nat(400), fc.nat(255), fc.nat(400), fc.nat(255), (at, value, other, second) => {
        const spoilt = file.slice();
        spoilt[at] = value;
        spoilt[other] = second;
        const read = readExif(spoilt);
        expect((read?.camera ?? '').length).toBeLessThanOrEqual(130);
        expect(read?.camera ?? '').toMatch(/^[\x20-\x7e]*$/);
      }),
      { numRuns: 3000 },
    );
  });

  it('becomes observations of the photo, which name nothing that is not there', async () => {
    expect(observeFile(await written({}, taken), 'p1').map(({ id, what, value }) => [id, what, value])).toEqual([
      ['p1-taken-at', 'taken-at', '2025-03-04T10:11:12'],
    ]);
    expect(observeFile(await written({}), 'p1')).toEqual([]);
  });
});
