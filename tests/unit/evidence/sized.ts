import type { Claim } from '../../../src/claim/types';
import { fromSizes, type SizedListing } from '../../../src/evidence/from-sizes';
import type { Evidence } from '../../../src/evidence/types';
import type { Measure } from '../../../src/listing/types';
import type { MakerFile, Model, Run, Size } from '../../../src/maker/types';
import type { Span } from '../../../src/span';
import { measureOf, stated } from '../check/sample';
import { ondrasse } from './samples';

/** Pages with a title and sides, makers with models of a size, and what the sizes say. */
export const size = (width: number, height?: number, depth?: number, over: Partial<Size> = {}): Size => ({
  ...{ width, unit: 'cm', tolerance: 1, ...over },
  ...(height === undefined ? {} : { height }),
  ...(depth === undefined ? {} : { depth }),
});
export const modelOf = (name: string, of: Size, over: Partial<Model> = {}, run: Partial<Run> = {}): Model => ({
  name,
  runs: [{ size: of, ...run }],
  ...over,
});
export const file = (...models: Model[]): MakerFile => ({ ...ondrasse, models });
export type Side = readonly [Measure['dimension'], number, number?];
export const page = (title: string, ...sides: Side[]): SizedListing => ({
  title: stated(title),
  model: [],
  measures: sides.flatMap(([side, mm, precision]) => stated(measureOf(side, mm, `${mm} mm`, precision))),
});
export const of = (
  listing: SizedListing,
  maker: MakerFile | null,
  claims: Claim[] = [],
  dates: Span[] = [],
): Evidence[] => fromSizes(claims, listing, maker, dates);
/** Each as "id: what from–to", to the third place. */
export const told = (...given: Parameters<typeof of>) =>
  of(...given).map(({ id, ...one }) => {
    const amounts = 'amounts' in one ? one.amounts : [];
    const number = (value: number) => String(Number(value.toFixed(3)));
    return `${id}: ${amounts.map((a) => `${a.of} ${number(a.least)}–${number(a.most)}`).join()}`;
  });
