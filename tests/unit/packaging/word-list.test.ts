import { gzipSync } from 'node:zlib';
import { array, assert, integer, property, record } from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unpackedEnglish } from '../../../src/packaging/packaged-files';
import { packedLanguage } from '../../../src/packaging/word-list';
import { languageFile } from '../../../src/reader/language-file';
import { type Edge, languageOf } from './language-of';

describe('a language file whose word list is told in planes', () => {
  it('is the print engine’s own to the last byte, and a twelfth smaller when packed', () => {
    const english = unpackedEnglish();
    const packed = packedLanguage(english);
    expect(Buffer.compare(languageFile(packed), english)).toBe(0);
    expect(gzipSync(packed).length).toBeLessThan((gzipSync(english).length * 11) / 12);
  });

  it('comes back whole, whatever its words', () => {
    const edge = record({ letter: integer({ min: 0, max: 112 }), flags: integer({ min: 0, max: 7 }), next: integer() });
    assert(
      property(array(edge, { maxLength: 600 }), (drawn) => {
        const nodes = [0, ...drawn.flatMap(({ flags }, at) => (flags % 2 === 1 ? [at + 1] : []))];
        const edges = drawn.map(
          ({ next, ...one }): Edge => ({ ...one, leadsTo: nodes[Math.abs(next) % nodes.length]! }),
        );
        const file = languageOf(edges);
        expect(languageFile(packedLanguage(file))).toEqual(file);
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  it('stops the build where an edge leads into the middle of a node', () => {
    const inside = languageOf([
      { letter: 3, flags: 0, leadsTo: 1 },
      { letter: 4, flags: 1, leadsTo: 0 },
    ]);
    expect(() => packedLanguage(inside)).toThrow('an edge of another form');
  });

  it.each([0, 11, 12, 200, 225])('does not start from the first %i bytes of it', (bytes) => {
    const packed = packedLanguage(languageOf([{ letter: 3, flags: 1, leadsTo: 0 }]));
    expect(() => languageFile(packed.subarray(0, bytes))).toThrow('is not whole');
  });
});
