import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { inspectBytes } from '../../../src/bridge/reader/inspect-bytes';

const drawn = () => sharp({ create: { width: 321, height: 123, channels: 3, background: '#7a3b23' } });
const bytesOf = (buffer: Buffer) => new Uint8Array(buffer);

describe('what a file is, from its first bytes', () => {
  it.each(['jpeg', 'png', 'gif', 'webp'] as const)('knows the size of a %s before decoding it', async (format) => {
    const bytes = bytesOf(await drawn().toFormat(format).toBuffer());
    expect(inspectBytes(bytes)).toEqual({ format, size: { width: 321, height: 123 } });
  });

  it('knows a lossless WebP, a progressive JPEG and a JPEG with a long profile in front', async () => {
    const size = { width: 321, height: 123 };
    expect(inspectBytes(bytesOf(await drawn().webp({ lossless: true }).toBuffer()))).toEqual({ format: 'webp', size });
    expect(inspectBytes(bytesOf(await drawn().jpeg({ progressive: true }).toBuffer()))?.size).toEqual(size);
    expect(inspectBytes(bytesOf(await drawn().withIccProfile('p3').jpeg().toBuffer()))?.size).toEqual(size);
  });

  it('knows the size of an AVIF, deep as it stands, so that an enormous one is not decoded', async () => {
    const bytes = bytesOf(await drawn().avif().toBuffer());
    expect(inspectBytes(bytes)).toEqual({ format: 'avif', size: { width: 321, height: 123 } });
    const at = Buffer.from(bytes).indexOf('ispe');
    new DataView(bytes.buffer, bytes.byteOffset).setUint32(at + 8, 100_000);
    expect(inspectBytes(bytes)?.size).toEqual({ width: 100_000, height: 123 });
    expect(inspectBytes(bytes.subarray(0, at))).toEqual({ format: 'avif', size: null });
  });

  it.each([
    '',
    'short',
    '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>',
    '<!doctype html><title>Sign in</title>',
  ])('takes no document for a photo: %s', (text) => {
    expect(inspectBytes(new TextEncoder().encode(text))).toBeNull();
  });

  it('never throws, wherever a photo is cut off', async () => {
    for (const format of ['jpeg', 'png', 'gif', 'webp', 'avif'] as const) {
      const whole = bytesOf(await drawn().toFormat(format).toBuffer());
      for (let length = 0; length < Math.min(whole.length, 700); length++) {
        expect(() => inspectBytes(whole.subarray(0, length))).not.toThrow();
      }
    }
  });
});
