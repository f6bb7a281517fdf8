import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { foreignFormat, readImageHeader } from '../../../src/photo';
import { sayProblem } from '../../../src/words';
import { problemInEnglish } from '../../said';

/** The first box of an ISO base media file with these brands. */
function brands(...names: string[]): Uint8Array {
  const text = `\0\0\0${String.fromCharCode(8 + 4 * names.length + 4)}ftyp${names[0]}\0\0\0\0${names.slice(1).join('')}`;
  return Uint8Array.from(text.padEnd(64, '\0'), (character) => character.charCodeAt(0));
}
const opening = (...bytes: number[]): Uint8Array => Uint8Array.from([...bytes, ...new Array(32).fill(0)]);

describe('a photo in a format that is not read here', () => {
  it.each([
    ['HEIC', brands('heic', 'mif1', 'heic')],
    ['HEIC', brands('mif1', 'heic')],
    ['HEIC', brands('msf1', 'hevc')],
    ['CR3', brands('crx ', 'isom')],
    ['TIFF', opening(0x49, 0x49, 0x2a, 0)],
    ['TIFF', opening(0x4d, 0x4d, 0, 0x2a)],
    ['PDF', opening(0x25, 0x50, 0x44, 0x46, 0x2d)],
    ['JPEG 2000', opening(0, 0, 0, 12, 0x6a, 0x50, 0x20, 0x20, 0x0d, 0x0a, 0x87, 0x0a)],
  ])('is named: %s', (name, bytes) => {
    expect(foreignFormat(bytes)).toBe(name);
    const read = readImageHeader(bytes, 'photo 1');
    expect(read).toMatchObject({ ok: false, problem: { code: 'photo-foreign-format' } });
    if (!read.ok) {
      const { what, remedy } = problemInEnglish(read.problem);
      expect(what).toContain(name);
      expect(remedy).toContain('JPEG');
    }
  });

  it('is none that a browser decodes, and no other file', async () => {
    const drawn = () => sharp({ create: { width: 32, height: 24, channels: 3, background: '#7a3b23' } });
    for (const format of ['jpeg', 'png', 'gif', 'webp', 'avif'] as const) {
      expect(foreignFormat(new Uint8Array(await drawn().toFormat(format).toBuffer()))).toBeNull();
    }
    expect(foreignFormat(new TextEncoder().encode('<!doctype html><title>Sign in</title>'))).toBeNull();
    expect(foreignFormat(brands('mif1', 'avif'))).toBeNull();
    expect(foreignFormat(new Uint8Array(4))).toBeNull();
  });

  it('is told from the first 64 bytes of a real HEIC file, and says in each language how to get a JPEG', () => {
    // strukturag/libheif, examples/example.heic, at 9f31998e.
    const real = Uint8Array.from(
      Buffer.from(
        '0000001c667479706d696631000000006d69663168656963686576630000039' +
          '96d657461000000000000002168646c72000000000000000070696374' +
          '00000000',
        'hex',
      ),
    );
    expect([real.length, foreignFormat(real)]).toEqual([64, 'HEIC']);
    const read = readImageHeader(real, 'photo 1');
    if (read.ok) throw new Error('it was taken for a photo');
    for (const [language, said] of [
      ['en', [/HEIC file.*telephones/, /as JPEG.*screenshot/]],
      ['de', [/HEIC-Datei.*Telefone/, /als JPEG.*Aufnahme/]],
    ] as const) {
      const { what, remedy } = sayProblem(read.problem, language);
      expect(what).toMatch(said[0]);
      expect(remedy).toMatch(said[1]);
    }
  });

  it('is told from a real TIFF as from its first bytes', async () => {
    const tiff = await sharp({ create: { width: 32, height: 24, channels: 3, background: '#7a3b23' } })
      .tiff()
      .toBuffer();
    expect(foreignFormat(new Uint8Array(tiff))).toBe('TIFF');
  });
});
