import { describe, expect, it } from 'vitest';
import { parseSrcset } from '../../src/listing/photos/srcset';
import { readFixture } from './fixture';

interface Fixture {
  cases: { srcset: string; sizes: string | null; expect_currentSrc: string; resolve: boolean }[];
}
const fixture = readFixture<Fixture>('fixtures/srcset.json');

/** The picture that a browser shows at density 1: the smallest candidate of at least that density, else the densest. */
function chosenAddress(srcset: string, sizes: string | null): string {
  const shown = sizes === null ? 1000 : Number.parseFloat(sizes);
  const candidates = parseSrcset(srcset).map(({ address, width, density }) => ({
    address,
    density: width === null ? (density ?? 1) : width / shown,
  }));
  const first = candidates.filter(
    (one, index) => candidates.findIndex((other) => other.density === one.density) === index,
  );
  const ordered = first.sort((a, b) => a.density - b.density);
  return (ordered.find((one) => one.density >= 1) ?? ordered.at(-1))?.address ?? '';
}

describe.skipIf(!fixture)('srcset by the standard (fixtures/srcset.json; skipped: not present)', () => {
  for (const [index, { srcset, sizes, expect_currentSrc, resolve }] of (fixture?.cases ?? []).entries())
    it(`case ${index + 1}: ${JSON.stringify(srcset).slice(0, 60)}`, () => {
      const chosen = chosenAddress(srcset, sizes);
      if (!resolve) expect(chosen).toBe(expect_currentSrc);
      else
        expect(new URL(chosen, 'https://attic-arcade.example/a/').href).toBe(
          new URL(expect_currentSrc, 'https://attic-arcade.example/a/').href,
        );
    });
});
