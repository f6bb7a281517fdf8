import { deflateRawSync, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { inflate } from '../../../src/reader/inflate';

const plain = Uint8Array.from({ length: 100_000 }, (_, at) => (at * at) % 251);
const packed = new Uint8Array(deflateSync(plain));

describe('what a zlib stream holds', () => {
  it('comes out, and no more than is asked for', async () => {
    expect(await inflate(packed, plain.length)).toEqual(plain);
    expect(await inflate(packed, 70)).toEqual(plain.subarray(0, 70));
  });

  it('of a stream that goes on for long is only what is asked for', async () => {
    const zeros = new Uint8Array(deflateSync(new Uint8Array(50_000_000)));
    expect((await inflate(zeros, 16))?.length).toBe(16);
  });

  it.each([
    ['ends too early', packed.slice(0, packed.length >> 1), plain.length],
    ['holds less than is asked for', packed, plain.length + 1],
    ['is none', Uint8Array.from([1, 2, 3, 4]), 4],
    ['has no head', new Uint8Array(deflateRawSync(plain)), plain.length],
    ['is empty', new Uint8Array(0), 1],
  ])('is nothing where it %s', async (_, bytes, most) => {
    expect(await inflate(bytes, most)).toBeNull();
  });
});
