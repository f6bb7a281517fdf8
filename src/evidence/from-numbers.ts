import type { Claim } from '../claim/types';
import type { FileNumber, MakerFile } from '../maker/types';
import type { MeasuredByHand } from '../photo/measure/hand/hand-types';
import { strengthOf } from '../source';
import { fileSource } from './file-source';
import { evidenceId } from './ids';
import { apartFromRange, type ColoursApart, type LabColour } from './nearest-colour';
import { type KnownPiece, numbersThen, type PlacedNumber } from './numbers-then';
import { partNamed } from './part-named';
import type { FileNumberSays, MeasuredNumberSays } from './says';
import type { Amount, EvidenceAbout } from './types';

type Value = EvidenceAbout<'value'>;

/** What was measured at a mark of a hand on a photo. */
interface Measured {
  id: string;
  photoId: string;
  mark: number;
  /** What the mark lies on, in somebody's words. */
  on: string;
  what: MeasuredByHand;
  value: number | string | readonly [number, number, number];
  uncertainty: number | null;
}
export interface MeasuredOnPhotos {
  observations: readonly Measured[];
  apart: ColoursApart;
}

/**
 * What was measured on a part, and the numbers that the maker's file gives of it for such a piece. Nothing of what the
 * mark's words do not name plainly, of a part that the seller calls replaced, and of what is not known how well it was
 * measured. The measure is soft: its points were set by hand, on a photo that was not taken for it.
 */
export function fromNumbers(
  { observations, apart }: MeasuredOnPhotos,
  claims: readonly Claim[],
  maker: MakerFile | null,
  piece: KnownPiece,
): Value[] {
  if (!maker || maker.numbers.length === 0) return [];
  const replaced = new Set<string>(claims.flatMap((claim) => (claim.kind === 'replaced' ? claim.parts : [])));
  const held = new Map<number, Value>();
  const measures = observations.flatMap((one): Value[] => {
    const is = inUnitOfFiles(one);
    const part = is && partNamed(one.on, maker);
    if (!is || !part || replaced.has(part)) return [];
    const numbers = numbersThen(maker, { of: is.of, part }, piece);
    if (numbers.length === 0) return [];
    for (const placed of numbers) held.set(placed.at, ofFile(placed, maker));
    return [measured(one, part, is, numbers, apart)];
  });
  return [...measures, ...held.values()];
}

const plain: Pick<Value, 'about' | 'spans' | 'places'> = { about: 'value', spans: [], places: [] };
type Is = MeasuredNumberSays['is'];

/** A measure as what files give numbers of; a pitch only where a scale is known. Null for any other. */
function inUnitOfFiles({ what, value, uncertainty: within }: Measured): Is | null {
  if (within === null) return null;
  if (what === 'count' && typeof value === 'number') return { of: 'stitches', value, within };
  if (what === 'lab' && typeof value === 'object') return { of: 'colour', lab: [...value], within };
  if (what !== 'stitches-per-cm' || typeof value !== 'number' || within >= value) return null;
  const pitch = 10 / value;
  return { of: 'stitch-pitch', value: pitch, within: 10 / (value - within) - pitch };
}

/** Of which number of the file an amount is: a colour is held against each by how far it is from it. */
const amountOf = (at: number, of: FileNumber['of'], least: number, most: number): Amount => ({
  of: `number-${at}`,
  unit: of === 'stitches' ? 'stitch' : of === 'colour' ? 'de2000' : 'mm',
  least,
  most,
});

function measured(
  { id, photoId, mark, on }: Measured,
  part: string,
  is: Is,
  numbers: readonly PlacedNumber[],
  apart: ColoursApart,
): Value {
  const amounts = numbers.map(({ number, at }) => {
    const value = is.of === 'colour' ? apartOf(is.lab, number, apart) : is.value;
    return amountOf(at, is.of, value - is.within, value + is.within);
  });
  return {
    ...plain,
    id: evidenceId.measured(id),
    from: { kind: 'photo', id },
    basis: `measured:${id}`,
    amounts,
    strength: 'soft',
    says: { kind: 'measured-number', photo: photoId, mark, on, part, is },
    source: { kind: 'photo' },
  };
}

const apartOf = (lab: LabColour, number: FileNumber, apart: ColoursApart): number =>
  number.of === 'colour'
    ? apartFromRange(lab, [number.lightness, number.greenRed, number.blueYellow], apart)
    : Number.POSITIVE_INFINITY;

function ofFile({ number, at }: PlacedNumber, maker: MakerFile): Value {
  const { of, part, sources = [] } = number;
  const isColour = number.of === 'colour';
  const is: FileNumberSays['is'] = isColour
    ? { of: 'colour', lightness: number.lightness, greenRed: number.greenRed, blueYellow: number.blueYellow }
    : { of: number.of, least: number.least, most: number.most };
  return {
    ...plain,
    id: evidenceId.fileNumber(at),
    from: { kind: 'maker-file', id: String(at) },
    basis: `file-number:${at}`,
    amounts: [isColour ? amountOf(at, of, 0, 0) : amountOf(at, of, number.least, number.most)],
    strength: strengthOf(number, 'soft'),
    says: { kind: 'file-number', maker: maker.maker, part, is },
    source: fileSource(maker, sources),
  };
}
