import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { assert, constantFrom, property, uint8Array } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaOf } from '../../../src/packaging/delta';
import { fromPackage } from '../../../src/packaging/packaged-files';
import { restored } from '../../../src/reader/restored';

const core = (name: string) => new Uint8Array(readFileSync(fromPackage(`tesseract.js-core/${name}`)));
const bytesOf = (text: string) => new TextEncoder().encode(text);
const alphabet = 'abcdefghijklmnopqrstuvwxyz';

describe('a file told by what it has beside another', () => {
  it('is the print engine without SIMD, to the last byte, in less than a tenth of its packed size', () => {
    const [base, whole] = [core('tesseract-core-simd-lstm.wasm'), core('tesseract-core-lstm.wasm')];
    const delta = deltaOf(whole, base);
    expect(Buffer.compare(restored(base, delta), whole)).toBe(0);
    expect(gzipSync(delta).length).toBeLessThan(gzipSync(whole).length / 10);
  });

  it('comes back whole, whatever the two share', () => {
    const part = uint8Array({ maxLength: 40 });
    const order = constantFrom('', 'a', 'ab', 'ba', 'abc', 'cab', 'aab', 'cabbage');
    const joined = (parts: Record<string, Uint8Array>, names: string) =>
      new Uint8Array(Buffer.concat([...names].map((name) => parts[name] ?? new Uint8Array())));
    assert(
      property(part, part, part, order, order, (a, b, c, first, second) => {
        const [base, whole] = [joined({ a, b, c }, first), joined({ a, b, c }, second)];
        expect(restored(base, deltaOf(whole, base))).toEqual(whole);
      }),
      { numRuns: 300, seed: 5 },
    );
  });

  it('copies a run of sixteen bytes, and writes out one of fifteen', () => {
    const held = (shared: string) => {
      const [base, whole] = [bytesOf(`--${shared}--`), bytesOf(`++${shared}++`)];
      const delta = deltaOf(whole, base);
      expect(restored(base, delta)).toEqual(whole);
      return Buffer.from(delta).includes(shared);
    };
    expect(held(alphabet.slice(0, 16))).toBe(false);
    expect(held(alphabet.slice(0, 15))).toBe(true);
  });

  it('goes forth and back in the other file', () => {
    const [first, second] = [alphabet, alphabet.toUpperCase()];
    const [base, whole] = [bytesOf(first + second), bytesOf(second + first + second)];
    const delta = deltaOf(whole, base);
    expect(restored(base, delta)).toEqual(whole);
    expect(delta.length).toBeLessThan(20);
  });
});

describe('a delta of another file', () => {
  const base = bytesOf(alphabet.repeat(3));
  const delta = deltaOf(bytesOf(`${alphabet.repeat(2)}!`), base);
  const doesNotFit = 'a file of the extension does not fit the one that it is made from';

  it.each([
    ['an empty one', base, new Uint8Array()],
    ['one that is cut off', base, delta.subarray(0, -1)],
    ['one that ends within a number', base, delta.subarray(0, 3)],
    ['one that goes on', base, new Uint8Array([...delta, 1])],
    ['a shorter file beside it', base.subarray(0, 10), delta],
    ['a run that begins ahead of the file', base, new Uint8Array([1, 3, 0, 1, 5])],
    ['a run behind the end of what is told', base, new Uint8Array([1, 3, 0, 0, 2])],
  ])('%s is refused', (_, beside, told) => expect(() => restored(beside, told)).toThrow(doesNotFit));
});
