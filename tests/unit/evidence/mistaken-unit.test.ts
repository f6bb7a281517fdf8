import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { fromSizes, type SizedListing } from '../../../src/evidence/from-sizes';
import { mistakenUnit } from '../../../src/evidence/mistaken-unit';
import type { Evidence } from '../../../src/evidence/types';
import type { Measure } from '../../../src/listing/types';
import type { MakerFile, Model, Run, Size } from '../../../src/maker/types';
import type { Span } from '../../../src/span';
import { measureOf, stated } from '../check/sample';
import { ondrasse } from './samples';

const size = (width: number, height?: number, depth?: number, over: Partial<Size> = {}): Size => ({
  ...{ width, unit: 'cm', tolerance: 1, ...over },
  ...(height === undefined ? {} : { height }),
  ...(depth === undefined ? {} : { depth }),
});
const modelOf = (name: string, of: Size, over: Partial<Model> = {}, run: Partial<Run> = {}): Model => ({
  name,
  runs: [{ size: of, ...run }],
  ...over,
});
const file = (...models: Model[]): MakerFile => ({ ...ondrasse, models });
type Side = readonly [Measure['dimension'], number, number?];
const page = (title: string, ...sides: Side[]): SizedListing => ({
  title: stated(title),
  model: [],
  measures: sides.flatMap(([side, mm, precision]) => stated(measureOf(side, mm, `${mm} mm`, precision))),
});
const of = (listing: SizedListing, maker: MakerFile | null, claims: Claim[] = [], dates: Span[] = []): Evidence[] =>
  fromSizes(claims, listing, maker, dates);

describe('a unit taken for another', () => {
  const satchel = file(modelOf('Satchel', size(30, 20)));
  const taken = (width: number, height: number | null, maker: MakerFile = satchel) =>
    mistakenUnit(
      of(page('Satchel', ['width', width, 1], ...(height === null ? [] : [['height', height, 1] as const])), maker),
    );

  it.each([
    ['inches as centimetres', 300 / 2.54, 200 / 2.54, 'inches-as-cm', 1 / 2.54],
    ['centimetres as inches', 300 * 2.54, 200 * 2.54, 'cm-as-inches', 2.54],
    ['centimetres as millimetres', 30, 20, 'cm-as-mm', 0.1],
    ['millimetres as centimetres', 3000, 2000, 'mm-as-cm', 10],
  ])('is found: %s', (_, width, height, mistaken, factor) => {
    expect(taken(width, height)).toEqual({ mistaken, factor, sides: ['size-read-0', 'size-read-1'] });
  });

  it('is none where the sides fit as they stand, where only one would, and where there is one side', () => {
    expect(taken(300, 200)).toBeNull();
    expect(taken(300, 20)).toBeNull();
    expect(taken(30, 200)).toBeNull();
    expect(taken(30, null)).toBeNull();
    expect(taken(30, 20, file(modelOf('Satchel', size(30))))).toBeNull();
    expect(taken(30, 20, file())).toBeNull();
    expect(taken(41, 33)).toBeNull();
  });
});
