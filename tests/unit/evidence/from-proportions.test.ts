import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { finestSides } from '../../../src/evidence/from-proportions';
import { fromSizes, type SizedListing } from '../../../src/evidence/from-sizes';
import type { Evidence } from '../../../src/evidence/types';
import type { Measure } from '../../../src/listing/types';
import type { MakerFile } from '../../../src/maker/types';
import type { Span } from '../../../src/span';
import { measureOf, stated } from '../check/sample';

type Side = readonly [Measure['dimension'], number, number?];
const page = (title: string, ...sides: Side[]): SizedListing => ({
  title: stated(title),
  model: [],
  measures: sides.flatMap(([side, mm, precision]) => stated(measureOf(side, mm, `${mm} mm`, precision))),
});
const of = (listing: SizedListing, maker: MakerFile | null, claims: Claim[] = [], dates: Span[] = []): Evidence[] =>
  fromSizes(claims, listing, maker, dates);

describe('of several statements of a side', () => {
  it('the finest counts, the first of equals, and no strap', () => {
    const evidence = of(
      page('Tote', ['height', 200, 5], ['width', 300, 5], ['width', 301, 1], ['width', 302, 1], ['strap', 900, 1]),
      null,
    );
    expect(finestSides(evidence)).toEqual([
      { id: 'size-read-2', side: 'width', mm: 301, precisionMm: 1, words: '301 mm', kind: 'size' },
      { id: 'size-read-0', side: 'height', mm: 200, precisionMm: 5, words: '200 mm', kind: 'size' },
    ]);
  });
});
