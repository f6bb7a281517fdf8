import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import { codeClaims } from './code';
import { conditionClaims } from './condition';
import { hedgedAuthorshipClaims } from './hedged-authorship';
import { claimNamer } from './id';
import { dateClaims } from './made';
import { judgingFiles, makerClaims, type StatedMaker, statedMaker } from './maker';
import { materialClaims } from './material';
import { measureClaims } from './measure';
import { modelClaims } from './model';
import { noCodeClaims } from './no-code';
import { originClaims } from './origin';
import { type ClaimDraft, type Passage, passagesOf, restOf } from './passage';
import { paymentOutsideClaims } from './payment-outside';
import { priceClaims } from './price';
import { replacedClaims } from './replaced';
import { returnsClaims } from './returns';
import { saleChannelClaims } from './sale-channel';
import type { Claim } from './types';
import { familyClaims } from './word-families';

export { type Lot, lotOf, placeClaims, type SaidOf } from './lot';
export { judgingFiles, namesNobody, type StatedMaker, statedMaker } from './maker';
export { possibleMakerName } from './name-words';
export { partBeside } from './parts';
export { isDataTerm } from './passage';
export { type Claim, type ClaimOf, claimSchema, type Part, partSchema } from './types';

/** What a finder of one kind of claim is handed. `judging` are the files that may speak of this piece. */
interface Material {
  passages: Passage[];
  /** What the page shows beside them. */
  rest: Passage | null;
  listing: Listing;
  makers: MakerFile[];
  judging: MakerFile[];
  stated: StatedMaker | null;
}

/** One finder a kind, in the order in which claims are listed. */
const finders: ((from: Material) => ClaimDraft[])[] = [
  ({ passages, listing }) => dateClaims(passages, listing.readAt),
  ({ passages, listing }) => conditionClaims(passages, listing),
  ({ passages, listing, judging }) => materialClaims(passages, listing, judging),
  ({ passages }) => replacedClaims(passages),
  ({ passages, listing }) => measureClaims(passages, listing),
  ({ passages, listing, judging, stated }) => modelClaims(passages, listing, judging, stated !== null),
  ({ passages }) => originClaims(passages),
  ({ passages, judging }) => codeClaims(passages, judging),
  ({ passages }) => noCodeClaims(passages),
  ({ listing }) => priceClaims(listing),
  ({ passages }) => saleChannelClaims(passages),
  ({ passages, listing }) => paymentOutsideClaims(passages, listing),
  ({ passages, listing }) => returnsClaims(passages, listing),
  ({ passages, makers, stated }) => hedgedAuthorshipClaims(passages, makers, stated),
  ({ passages, rest }) => familyClaims(rest ? [...passages, rest] : passages),
];

/**
 * All that the seller says of the piece and its sale, with the exact words and their place in the best title and
 * description. Never throws; a listing without text has only the claims of its data. Ids name what is said, not its place.
 */
export function findClaims(listing: Listing, makers: MakerFile[]): Claim[] {
  const passages = passagesOf(listing);
  const rest = restOf(listing);
  const byMaker = makerClaims(passages, listing, makers);
  const stated = statedMaker(byMaker, makers);
  const judging = judgingFiles(stated, makers);
  const drafts = [...byMaker, ...finders.flatMap((find) => find({ passages, rest, listing, makers, judging, stated }))];
  const nameOf = claimNamer();
  return drafts.map((draft) => ({ id: nameOf(draft), ...draft }) as Claim);
}
