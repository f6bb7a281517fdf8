import type { Claim } from '../claim/types';
import type { Listing, Measure } from '../listing/types';
import type { MakerFile, Model } from '../maker/types';
import { commonPractice, type Source } from '../source';
import { fileSource } from './file-source';
import { proportionsOf } from './from-proportions';
import { evidenceId } from './ids';
import { hasSize, modelMm, namedSides, numberedName, sides, sizedModels } from './named-sides';
import { roomMm } from './room';
import type { SizeSide } from './says';
import type { Amount, Evidence, EvidenceAbout } from './types';

type Size = EvidenceAbout<'size'>;
/** What of a page speaks of size. */
export type SizedListing = Pick<Listing, 'measures' | 'model' | 'title'>;
const plain: Pick<Size, 'about' | 'spans' | 'places' | 'strength'> = {
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
 * has no size of it. A row without names of sides is taken in the order that fits the model best.
 */
export function fromSizes(claims: readonly Claim[], listing: SizedListing, maker: MakerFile | null): Evidence[] {
  const models = maker?.models ?? [];
  const model = claims.filter((claim) => claim.kind === 'model');
  const { own, relatives } = sizedModels(models, { model, fields: [listing.model, listing.title] });
  const named = numberedName(model, listing.model);
  const number = named && !hasSize(named.name, models) ? named : null;
  const like = own ?? relatives[0];
  const expected = {
    ...(like?.size ? modelMm(like.size).mm : {}),
    ...(number && !own ? { width: number.number * 10 } : {}),
  };
  const read = listing.measures.map(({ value }, at) => ({ ...value, id: `read-${at}`, claim: '' }));
  const claimed = claims.flatMap((claim) =>
    claim.kind === 'measure' ? [{ ...claim.measure, id: claim.id, claim: claim.id }] : [],
  );
  const stated = namedSides(read, claimed, expected).flatMap(({ dimension, ...one }) =>
    dimension === 'handle' ? [] : [stating(dimension, one)],
  );
  return [
    ...stated,
    ...(own && maker ? modelSizes(own, fileSource(maker, own.source ? [own.source] : [])) : []),
    ...(number ? [namedWidth(number)] : []),
    ...(maker ? proportionsOf(stated, relatives, fileSource(maker, [])) : []),
  ];
}

const stating = (
  side: SizeSide,
  { mm, precisionMm, words, id, claim }: Omit<Measure, 'dimension'> & { id: string; claim: string },
): Size => ({
  ...plain,
  id: evidenceId.size(id),
  from: claim ? { kind: 'claim', id: claim } : { kind: 'listing', id },
  basis: `size:${side}:${mm}/${precisionMm}`,
  amounts: around(side, mm, precisionMm + roomMm.tape),
  says: { kind: 'size', side, mm, precisionMm, words },
  source: { kind: 'listing', field: 'measures' },
});

function modelSizes(model: Model, source: Source): Size[] {
  const { mm: lengths, toleranceMm } = model.size ? modelMm(model.size) : { mm: {}, toleranceMm: 0 };
  return sides.flatMap((side): Size[] => {
    const mm = lengths[side];
    if (mm === undefined) return [];
    return [
      {
        ...plain,
        id: evidenceId.modelSize(side),
        from: { kind: 'maker-file', id: model.name },
        basis: `model-size:${side}`,
        amounts: around(side, mm, toleranceMm),
        says: { kind: 'model-size', side, mm, model: model.name },
        source,
      },
    ];
  });
}

const namedWidth = ({ name, number }: { name: string; number: number }): Size => ({
  ...plain,
  id: evidenceId.namedWidth,
  from: { kind: 'listing', id: name },
  basis: 'named-width',
  amounts: around('width', number * 10, roomMm.named),
  says: { kind: 'named-width', name, number },
  source: commonPractice,
});
