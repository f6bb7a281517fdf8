import type { Claim } from '../claim/types';
import type { Listing, Measure } from '../listing/types';
import type { MakerFile, Model, Size } from '../maker/types';
import { commonPractice, type Source } from '../source';
import { periodSpans, type Span } from '../span';
import { fileSource } from './file-source';
import { proportionsOf } from './from-proportions';
import { evidenceId } from './ids';
import { type SizedRun, sizedRuns, sizesThen, sourcesOfSize } from './model-runs';
import {
  hasSize,
  modelMm,
  namedSides,
  namingModel,
  numberedName,
  sides,
  sizedModels,
  wordsNaming,
} from './named-sides';
import { roomMm } from './room';
import type { SizeSays, SizeSide } from './says';
import type { Amount, Evidence, EvidenceAbout } from './types';

type Stated = EvidenceAbout<'size'>;
/** The length of a side, as it is stated. */
type SaidSide = Stated & { says: Extract<SizeSays, { kind: 'size' }> };
/** What of a page speaks of size. */
export type SizedListing = Pick<Listing, 'measures' | 'model' | 'title'>;
const plain: Pick<Stated, 'about' | 'spans' | 'places' | 'strength'> = {
  about: 'size',
  spans: [],
  places: [],
  strength: 'soft',
};

const around = (of: string, mm: number, room: number): Amount[] => [
  { of, unit: 'mm', least: mm - room, most: mm + room },
];

/**
 * The lengths that are stated, and those that a model has: by its file, or by the number in its name where the file
 * has no size of it. A row without names of sides is taken in the order that fits the model best; of several sizes of
 * one model, those of the dates of the piece count, and of them the one that fits best.
 */
export function fromSizes(
  claims: readonly Claim[],
  listing: SizedListing,
  maker: MakerFile | null,
  dates: readonly Span[] = [],
): Evidence[] {
  const models = maker?.models ?? [];
  const naming = namingModel(claims, listing);
  const { own, relatives } = sizedModels(models, naming);
  const named = numberedName(naming.model, listing.model);
  const number = named && !hasSize(named.name, models) ? named : null;
  const sizes = own ? sizesThen(own, { dates, words: wordsNaming(naming) }) : relatives.flatMap(sizedRuns).slice(0, 1);
  const stated = (size: Size | undefined) => {
    const expected = { ...(size ? modelMm(size).mm : {}), ...(number && !own ? { width: number.number * 10 } : {}) };
    return statedSides(claims, listing, expected);
  };
  const run = likest(sizes, stated);
  const found = stated(run?.size);
  return [
    ...found,
    ...(own && run && maker ? modelSizes(own, run, fileSource(maker, sourcesOfSize(run, own))) : []),
    ...(number ? [namedWidth(number)] : []),
    ...proportionsOf(found, relatives, fileSource(maker, [])),
  ];
}

function statedSides(
  claims: readonly Claim[],
  listing: SizedListing,
  expected: Parameters<typeof namedSides>[2],
): SaidSide[] {
  const read = listing.measures.map(({ value }, at) => ({ ...value, id: `read-${at}`, claim: '' }));
  const claimed = claims.flatMap((claim) =>
    claim.kind === 'measure' ? [{ ...claim.measure, id: claim.id, claim: claim.id }] : [],
  );
  return namedSides(read, claimed, expected).flatMap(({ dimension, ...one }) =>
    dimension === 'handle' ? [] : [stating(dimension, one)],
  );
}

/** The size that the stated sides are least off, beyond its own tolerance. */
function likest(runs: readonly SizedRun[], stated: (size: Size) => SaidSide[]): SizedRun | undefined {
  const off = ({ size }: SizedRun) => {
    const { mm, toleranceMm } = modelMm(size);
    const lengths: Partial<Record<SizeSide, number>> = mm;
    return stated(size).reduce((sum, { says }) => {
      const length = lengths[says.side];
      return sum + (length === undefined ? 0 : Math.max(0, Math.abs(says.mm - length) - toleranceMm));
    }, 0);
  };
  const weighed = runs.map((run) => ({ run, off: off(run) }));
  return weighed.reduce<(typeof weighed)[number] | undefined>(
    (best, one) => (best && best.off <= one.off ? best : one),
    undefined,
  )?.run;
}

const stating = (
  side: SizeSide,
  { mm, precisionMm, words, id, claim }: Omit<Measure, 'dimension'> & { id: string; claim: string },
): SaidSide => ({
  ...plain,
  id: evidenceId.size(id),
  from: claim ? { kind: 'claim', id: claim } : { kind: 'listing', id },
  basis: `size:${side}:${mm}/${precisionMm}`,
  amounts: around(side, mm, precisionMm + roomMm.tape),
  says: { kind: 'size', side, mm, precisionMm, words },
  source: { kind: 'listing', field: 'measures' },
});

function modelSizes(model: Model, { size, made }: SizedRun, source: Source): Stated[] {
  const { mm: lengths, toleranceMm } = modelMm(size);
  const [first, ...more] = made ? periodSpans(made) : [];
  const isOne = first && more.length === 0 && (first.from || first.to);
  // Where the model had one size only, its years are the model's and said elsewhere.
  const then = isOne && sizedRuns(model).length > 1 ? { made: first } : {};
  return sides.flatMap((side): Stated[] => {
    const mm = lengths[side];
    if (mm === undefined) return [];
    return [
      {
        ...plain,
        id: evidenceId.modelSize(side),
        from: { kind: 'maker-file', id: model.name },
        basis: `model-size:${side}`,
        amounts: around(side, mm, toleranceMm),
        says: { kind: 'model-size', side, mm, model: model.name, ...then },
        source,
      },
    ];
  });
}

const namedWidth = ({ name, number }: { name: string; number: number }): Stated => ({
  ...plain,
  id: evidenceId.namedWidth,
  from: { kind: 'listing', id: name },
  basis: 'named-width',
  amounts: around('width', number * 10, roomMm.named),
  says: { kind: 'named-width', name, number },
  source: commonPractice,
});
