import type { Claim } from '../claim/types';
import type { Decoding } from '../code/types';
import type { MakerFile } from '../maker/types';
import type { MarkRead } from '../mark/types';
import { fromClaims } from './from-claims';
import { fromDecodings } from './from-decodings';
import { fromMaker } from './from-maker';
import { fromMarks } from './from-marks';
import type { Evidence } from './types';

export interface Gathered {
  claims: readonly Claim[];
  decodings: readonly Decoding[];
  marks: readonly MarkRead[];
  /** The file of the piece's maker, null when none fits. */
  maker: MakerFile | null;
}

/**
 * Everything that dates or places the piece, as statements in one form: what the seller says, what the codes read,
 * the marks, and dated facts of the maker file that the words call up. Pure; ids follow from the ids that go in.
 */
export function gatherEvidence({ claims, decodings, marks, maker }: Gathered): Evidence[] {
  const claimed = fromClaims(claims);
  return [
    ...claimed,
    ...fromDecodings(decodings, maker?.maker ?? null),
    ...fromMarks(marks, claims, claimed),
    ...fromMaker(claims, maker),
  ];
}
