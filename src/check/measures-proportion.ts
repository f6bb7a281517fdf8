import type { Measure } from '../listing/types';
import { plainName } from '../maker';
import type { Model } from '../maker/types';
import { fromMakerFile, makerFileSource } from './frame';
import { namedModel } from './models';
import { mmWords, modelMm, namedSides, type Side, sides, statedSide } from './sizes';
import { commonAsks, listWords } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Sellers measure a soft body with a loose tape. Common practice, no source. */
const tapeMm = 5;
/** Sizes of one model differ in shape by this share at most. Common practice, no source. */
const familyShare = 0.2;

/** Stated length over true length when a unit is taken for another (1 inch is 25.4 mm). */
const confusions = [
  { factor: 1 / 2.54, words: 'inches written as centimetres' },
  { factor: 2.54, words: 'centimetres written as inches' },
  { factor: 0.1, words: 'centimetres written as millimetres' },
  { factor: 10, words: 'millimetres written as centimetres' },
] as const;

type Stated = { side: Side; measure: Measure };
type Sizes = Partial<Record<Side, number>>;

export const measuresProportion = defineWritten({
  id: 'measures-proportion',
  family: 'size',
  title: 'The measurements stand in the proportion of the model',
  failureTitle: 'The measurements do not stand in the proportion of the model',
  kinds: ['doubt'],
  basis: 'The sizes of one model keep its shape; a wrong unit makes every side wrong by the same factor.',
  innocent: 'The seller may have mixed up inches and centimetres, or measured a soft body at its widest.',
  settles: 'The width, height and depth with the tape and its unit in the photo.',
  source: makerFileSource,
  needs: { maker: ['models'], claims: ['model', 'measure'], listing: ['model', 'title', 'measures'] },
  run({ listing, claims, maker }) {
    const said = { model: claims.model, fields: [listing.model, listing.title] };
    const own = namedModel(maker.models, said);
    const relatives = own?.model.size ? [own.model] : relativesOf(maker.models, said);
    const [first] = relatives;
    if (!first?.size) return { notApplicable: 'the maker file gives no size of the model or of one named like it' };
    const measures = namedSides(
      listing.measures.map(({ value }) => value),
      claims.measure.map(({ measure }) => measure),
      modelMm(first.size).mm,
    );
    const stated = sides.flatMap((side): Stated[] => {
      const measure = statedSide(measures, side);
      return measure ? [{ side, measure }] : [];
    });
    if (stated.length < 2) return { cannotTell: 'the page does not state two of width, height and depth' };
    const statement = own?.model.size ? confusedUnit(own.model, stated) : otherShape(relatives, stated);
    if (statement === null) return [];
    const speech: WrittenSpeech = {
      kind: 'doubt',
      statement,
      claims: [...(own?.claims ?? []), ...claims.measure.map(({ id }) => id)],
      source: fromMakerFile(maker.name, `size of ${listWords(relatives.map(({ name }) => name))}`),
      asks: [commonAsks.measures],
    };
    return [speech];
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
function confusedUnit(model: Model, stated: Stated[]): string | null {
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
  const words = known.map(({ side, measure }) => `${side} ${mmWords(measure.mm)}`);
  const factor = confusion.factor > 1 ? confusion.factor : Math.round(100 / confusion.factor) / 100;
  const how = confusion.factor > 1 ? `${factor} times` : `smaller by a factor of ${factor} than`;
  return `The listing states ${listWords(words)}, each ${how} the side of a ${model.name}: ${confusion.words} would explain it.`;
}

/** Says which two sides stand in a proportion that no size of the model has; null when all could. */
function otherShape(relatives: Model[], stated: Stated[]): string | null {
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
      const stood = (a.measure.mm / b.measure.mm).toFixed(1);
      const range = [...new Set([Math.min(...ratios).toFixed(1), Math.max(...ratios).toFixed(1)])].join(' to ');
      return `${a.side === 'width' ? 'Width' : 'Height'} ${mmWords(a.measure.mm)} is ${stood} times the ${b.side} ${mmWords(b.measure.mm)}; ${listWords(relatives.map(({ name }) => name))} ${relatives.length === 1 ? 'has' : 'have'} ${range} times.`;
    }
  return null;
}

const ratioOf = (mm: Sizes, a: Side, b: Side): number[] => (mm[a] && mm[b] ? [mm[a] / mm[b]] : []);
