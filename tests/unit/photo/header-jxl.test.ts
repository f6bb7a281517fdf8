import { describe, expect, it } from 'vitest';
import { foreignFormat, openPhoto, readImageHeader } from '../../../src/photo';
import { problemInEnglish } from '../../said';

const bytes = (hex: string): Uint8Array<ArrayBuffer> => Uint8Array.from(Buffer.from(hex.padEnd(80, '0'), 'hex'));
const boxes = '0000000c4a584c200d0a870a00000014667479706a786c20000000006a786c20';

/** The first bytes of pictures of the standard's conformance set (libjxl/conformance), and the sizes of their references. */
const pictures = [
  ['ff0a5f0403d813004c0065400039', 128, 128],
  ['ff0a383b4100d604081060810000', 480, 360],
  ['ff0af81941007202d02301058002', 320, 320],
  ['ff0ab213e87f0c088100008e9401', 1024, 631],
] as const;

describe('a JPEG XL picture', () => {
  it.each(pictures)('%s says its size', (hex, width, height) => {
    expect(readImageHeader(bytes(hex), 'photo 1')).toEqual({
      ok: true,
      value: { type: 'jxl', mime: 'image/jxl', width, height },
    });
  });

  it('says it behind boxes, whole or in parts', () => {
    const size = { ok: true, value: { width: 1024, height: 631 } };
    const whole = bytes(`${boxes}000000006a786c63${pictures[3][0]}`);
    expect(readImageHeader(whole, 'photo 1')).toMatchObject(size);
    const parts = bytes(`${boxes}000000096a786c6c05000000406a786c7000000000${pictures[3][0]}`);
    expect(readImageHeader(parts, 'photo 1')).toMatchObject(size);
  });

  it('that ends before it says so is cut off', () => {
    for (const hex of ['ff0ab213', boxes, `${boxes}000000006a786c63ff0ab2`]) {
      const cut = Uint8Array.from(Buffer.from(hex, 'hex'));
      expect(readImageHeader(cut, 'photo 1')).toMatchObject({ ok: false, problem: { code: 'photo-truncated' } });
    }
  });

  it('is read where the decoder reads it', async () => {
    const image = { width: 480, height: 360, data: new Uint8ClampedArray(480 * 360 * 4) };
    expect(await openPhoto(bytes(pictures[1][0]), 'photo 1', async () => image)).toMatchObject({
      ok: true,
      value: { image, scale: 1 },
    });
  });

  it('is named where the decoder does not, with how to get a JPEG; it is not called damaged', async () => {
    const opened = await openPhoto(bytes(pictures[1][0]), 'photo 1', async () => null);
    expect(opened).toMatchObject({ ok: false, problem: { code: 'photo-foreign-format' } });
    expect(opened.ok ? '' : Object.values(problemInEnglish(opened.problem)).join(' ')).toMatch(/JPEG XL.*as JPEG/);
    expect(foreignFormat(bytes(pictures[1][0]))).toBe('JPEG XL');
  });
});
