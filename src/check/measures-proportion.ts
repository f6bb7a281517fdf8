import * as z from 'zod';
import type { Measure } from '../listing/types';
import { plainName } from '../maker';
import type { Model } from '../maker/types';
import { askFor } from './asks';
import { namedModel } from './fact/model';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { because } from './reasons';
import { modelMm, namedSides, type Side, sidedSchema, sides, statedSide } from './sizes';

/** Sellers measure a soft body with a loose tape. Common practice, no source. */
const tapeMm = 5;
/** Sizes of one model differ in shape by this share at most. Common practice, no source. */
const familyShare = 0.2;

/** Stated length over true length when a unit is taken for another (1 inch is 25.4 mm). */
const confusions = [
  { factor: 1 / 2.54, mistaken: 'inches-as-cm' },
  { factor: 2.54, mistaken: 'cm-as-inches' },
  { factor: 0.1, mistaken: 'cm-as-mm' },
  { factor: 10, mistaken: 'mm-as-cm' },
] as const;

/** All sides wrong by one factor, which a unit taken for another explains. */
const unitSchema = z.strictObject({
  fault: z.literal('unit'),
  model: z.string(),
  sides: z.array(sidedSchema),
  factor: z.number(),
  mistaken: z.enum(['inches-as-cm', 'cm-as-inches', 'cm-as-mm', 'mm-as-cm']),
});
/** Two sides in a proportion that no size of the model has. */
const shapeSchema = z.strictObject({
  fault: z.literal('shape'),
  one: sidedSchema,
  other: sidedSchema,
  models: z.array(z.string()),
  /** The proportions that the models have. */
  least: z.number(),
  most: z.number(),
});

type Stated = { side: Side; measure: Measure };
type Sizes = Partial<Record<Side, number>>;

export const measuresProportion = defineCheck({
  id: 'measures-proportion',
  family: 'size',
  kinds: ['doubt'],
  source: makerFileSource,
  data: z.discriminatedUnion('fault', [unitSchema, shapeSchema]),
  limits: { tapeMm, familyShare },
  needs: {
    onePiece: true,
    maker: ['models'],
    claims: ['model', 'measure'],
    listing: ['model', 'title', 'measures'],
    perhaps: ['model'],
  },
  run({ listing, claims, maker, fact }) {
    const said = { model: claims.model, fields: [listing.model, listing.title] };
    const own = 'is' in fact.model ? fact.model.is : null;
    const relatives = own?.model.size ? [own.model] : relativesOf(maker.models, said);
    const [first] = relatives;
    if (!first?.size) return { notApplicable: because('no-sized-relative', {}) };
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
      modelMm(first.size).mm,
    );
    const stated = sides.flatMap((side): Stated[] => {
      const measure = statedSide(measures, side);
      return measure ? [{ side, measure }] : [];
    });
    if (stated.length < 2) return { cannotTell: because('fewer-than-two-sides', {}) };
    const data = own?.model.size ? confusedUnit(own.model, stated) : otherShape(relatives, stated);
    if (data === null) return [];
    return [
      {
        kind: 'doubt',
        data,
        claims: [...(own?.claims ?? []), ...claims.measure.map(({ id }) => id)],
        source: fromMakerFile(maker.name, `size of ${relatives.map(({ name }) => name).join(', ')}`),
        asks: [askFor('measures', {})],
      },
    ];
  },
});

const stemOf = (name: string): string => plainName(name).replace(/ \d+$/, '');

/** Models with a size whose name is the listing's but for the number: "Carryall 30" for a "Carryall 40". */
function relativesOf(models: Model[], said: Parameters<typeof namedModel>[1]): Model[] {
  const numbered = models.filter(({ name, size }) => size && stemOf(name) !== plainName(name));
  const named = namedModel(
    numbered.map((model) => ({ ...model, name: stemOf(model.name), aliases: [] })),
    said,
  );
  return named ? numbered.filter(({ name }) => stemOf(name) === named.model.name) : [];
}

/** Says which unit would explain all sides at once; null when the sides fit, or no unit explains them. */
function confusedUnit(model: Model, stated: Stated[]): z.infer<typeof unitSchema> | null {
  if (!model.size) return null;
  const { mm: expected, toleranceMm } = modelMm(model.size);
  const known = stated.filter(({ side }) => expected[side] !== undefined);
  if (known.length < 2) return null;
  const fits = (factor: number) =>
    known.every(({ side, measure }) => {
      const allowed = toleranceMm + (measure.precisionMm + tapeMm) / factor;
      return Math.abs(measure.mm / factor - (expected[side] ?? 0)) <= allowed;
    });
  const confusion = fits(1) ? undefined : confusions.find(({ factor }) => fits(factor));
  if (!confusion) return null;
  const sides = known.map(({ side, measure }) => ({ side, mm: measure.mm }));
  return { fault: 'unit', model: model.name, sides, ...confusion };
}

/** Says which two sides stand in a proportion that no size of the model has; null when all could. */
function otherShape(relatives: Model[], stated: Stated[]): z.infer<typeof shapeSchema> | null {
  const sizes = relatives.flatMap(({ size }) => (size ? [modelMm(size).mm] : []));
  for (const [index, a] of stated.entries())
    for (const b of stated.slice(index + 1)) {
      const ratios = sizes.flatMap((mm) => ratioOf(mm, a.side, b.side));
      if (ratios.length === 0) continue;
      const least = Math.min(...ratios) * (1 - familyShare);
      const most = Math.max(...ratios) * (1 + familyShare);
      const slackA = a.measure.precisionMm + tapeMm;
      const slackB = b.measure.precisionMm + tapeMm;
      const lowest = (a.measure.mm - slackA) / (b.measure.mm + slackB);
      const highest = (a.measure.mm + slackA) / Math.max(1, b.measure.mm - slackB);
      if (lowest <= most && highest >= least) continue;
      return {
        fault: 'shape',
        one: { side: a.side, mm: a.measure.mm },
        other: { side: b.side, mm: b.measure.mm },
        models: relatives.map(({ name }) => name),
        least: Math.min(...ratios),
        most: Math.max(...ratios),
      };
    }
  return null;
}

const ratioOf = (mm: Sizes, a: Side, b: Side): number[] => (mm[a] && mm[b] ? [mm[a] / mm[b]] : []);
