import type { Model } from '../maker/types';
import type { Source } from '../source';
import { evidenceId } from './ids';
import { sizedRuns } from './model-runs';
import { modelMm, sides } from './named-sides';
import { familyShare, roomMm } from './room';
import type { BagSide, SizeSays } from './says';
import type { EvidenceAbout } from './types';

type Size = EvidenceAbout<'size'>;
type Value = EvidenceAbout<'value'>;
type SaidSize = Extract<SizeSays, { kind: 'size' }>;
const plain: Pick<Value, 'about' | 'spans' | 'places' | 'strength'> = {
  about: 'value',
  spans: [],
  places: [],
  strength: 'soft',
};

/** The length of each side that is stated with the finest step, with the statement. */
export function finestSides(evidence: readonly { id: string; says: { kind: string } }[]): StatedSide[] {
  const stated = evidence.flatMap(({ id, says }) => (says.kind === 'size' ? [{ ...(says as SaidSize), id }] : []));
  return sides.flatMap((side) => {
    const [finest] = stated.filter((one) => one.side === side).sort((a, b) => a.precisionMm - b.precisionMm);
    return finest ? [{ ...finest, side }] : [];
  });
}
export type StatedSide = Omit<SaidSize, 'side' | 'kind'> & { id: string; side: BagSide };

/** The proportion of every two sides that are stated, and the proportions that the sizes of one family of models have. */
export function proportionsOf(stated: readonly Size[], relatives: readonly Model[], source: Source): Value[] {
  const sizes = relatives.flatMap(sizedRuns).map(({ size }) => modelMm(size).mm);
  const finest = finestSides(stated);
  return finest.flatMap((one, at) =>
    finest.slice(at + 1).flatMap((other): Value[] => {
      const ratios = sizes.flatMap((mm) => {
        const [a, b] = [mm[one.side], mm[other.side]];
        return a && b ? [a / b] : [];
      });
      if (ratios.length === 0) return [];
      const of = `${one.side}:${other.side}`;
      return [proportion(of, one, other), ofFamily(of, ratios, relatives, source)];
    }),
  );
}

function proportion(of: string, one: StatedSide, other: StatedSide): Value {
  const slack = ({ precisionMm }: StatedSide) => precisionMm + roomMm.tape;
  const least = (one.mm - slack(one)) / (other.mm + slack(other));
  const most = (one.mm + slack(one)) / Math.max(1, other.mm - slack(other));
  return {
    ...plain,
    id: evidenceId.proportion(of),
    from: { kind: 'listing', id: of },
    basis: `proportion:${of}`,
    amounts: [{ of, unit: 'ratio', least, most }],
    says: { kind: 'proportion', one: { side: one.side, mm: one.mm }, other: { side: other.side, mm: other.mm } },
    source: { kind: 'listing', field: 'measures' },
  };
}

function ofFamily(of: string, ratios: readonly number[], relatives: readonly Model[], source: Source): Value {
  const [least, most] = [Math.min(...ratios), Math.max(...ratios)];
  return {
    ...plain,
    id: evidenceId.familyProportion(of),
    from: { kind: 'maker-file', id: of },
    basis: `family-proportion:${of}`,
    amounts: [{ of, unit: 'ratio', least: least * (1 - familyShare), most: most * (1 + familyShare) }],
    says: { kind: 'family-proportion', models: relatives.map(({ name }) => name), least, most },
    source,
  };
}
