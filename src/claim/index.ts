import type { Listing } from '../listing/types';
import type { MakerFile } from '../maker/types';
import { appraisedClaims } from './appraised';
import { codeClaims } from './code';
import { conditionClaims } from './condition';
import { hedgedAuthorshipClaims } from './hedged-authorship';
import { claimNamer } from './id';
import { inStockClaims } from './in-stock';
import { dateClaims } from './made';
import { judgingFiles, makerClaims, type StatedMaker, statedMaker } from './maker';
import { materialClaims } from './material';
import { measureClaims } from './measure';
import { modelClaims } from './model';
import { noCodeClaims } from './no-code';
import { isOfOffer, offerOf } from './offer';
import type { Offer } from './offer-types';
import { originClaims } from './origin';
import { type ClaimDraft, namedIn, type Passage, passage, passagesOf, restOf } from './passage';
import { paymentOutsideClaims } from './payment-outside';
import { priceClaims } from './price';
import { replacedClaims } from './replaced';
import { returnsClaims } from './returns';
import { rowsOf } from './rows';
import { saleChannelClaims } from './sale-channel';
import type { Claim } from './types';
import { familyClaims } from './word-families';

export { type Lot, lotOf, placeClaims, type SaidOf } from './lot';
export { judgingFiles, namesNobody, type StatedMaker, statedMaker } from './maker';
export { likelyMakerName, possibleMakerName } from './name-words';
export { offerOf } from './offer';
export { partBeside } from './parts';
export { isDataTerm } from './passage';
export { type Claim, type ClaimOf, claimSchema, type Part, partSchema } from './types';

/** What a finder of one kind of claim is handed. `judging` are the files that may speak of this piece. */
interface Material {
  /** Title, description and replies: the seller's own prose. */
  prose: Passage[];
  /** The prose, and the rows of the page's tables that are of the piece. */
  passages: Passage[];
  /** What the page shows beside title and description, rows and all. */
  rest: Passage | null;
  listing: Listing;
  makers: MakerFile[];
  judging: MakerFile[];
  stated: StatedMaker | null;
}

/**
 * One finder a kind, in the order in which claims are listed. Where a listing has a field for what is said (size, model,
 * returns, payment), the page's rows were read into it, and the field stands for them.
 */
const finders: ((from: Material) => ClaimDraft[])[] = [
  ({ passages, listing, judging }) => dateClaims(passages, writtenAt(listing), judging),
  ({ passages, listing }) => conditionClaims(passages, listing),
  ({ passages, listing, judging }) => materialClaims(passages, listing, judging),
  ({ passages, listing }) => replacedClaims(passages, writtenAt(listing)),
  ({ passages, listing }) => appraisedClaims(passages, writtenAt(listing)),
  ({ prose, listing }) => measureClaims(prose, listing),
  ({ prose, listing, judging, stated }) => modelClaims(prose, listing, judging, stated !== null),
  ({ passages }) => originClaims(passages),
  ({ passages, judging }) => codeClaims(passages, judging),
  ({ passages }) => noCodeClaims(passages),
  ({ listing }) => priceClaims(listing),
  ({ passages }) => saleChannelClaims(passages),
  ({ prose, listing }) => paymentOutsideClaims(prose, listing),
  ({ prose, listing }) => returnsClaims(prose, listing),
  ({ passages, makers, stated }) => hedgedAuthorshipClaims(passages, makers, stated),
  ({ listing }) => inStockClaims(listing),
  ({ prose, rest, listing }) => familyClaims(rest ? [...prose, rest] : prose, writtenAt(listing)),
];

/**
 * All that the seller says of the piece and its sale, in whatever passage: the best title and description, the rows of
 * the page's tables, and replies. Each with the exact words, and their place where they stand in running text. Never
 * throws; a listing without text has only the claims of its data. Ids name what is said, not its place.
 */
export function findClaims(listing: Listing, makers: MakerFile[], replies: readonly string[] = []): Claim[] {
  const own = isOfPiece(listing) ? passagesOf(listing) : [];
  const prose = [...own, ...replies.map((reply) => passage('reply', reply, listing.language, namedIn(listing)))];
  const rest = isOfPiece(listing) ? restOf(listing) : null;
  const passages = [...prose, ...(rest ? rowsOf(rest) : [])];
  const byMaker = makerClaims(prose, listing, makers);
  const stated = statedMaker(byMaker, makers);
  const judging = judgingFiles(stated, makers);
  const from = { prose, passages, rest, listing, makers, judging, stated };
  const found = withoutSizesInCodes(saidOnce([...byMaker, ...finders.flatMap((find) => find(from))]));
  const offer = offerOf(listing, found);
  const drafts = found.filter((draft) => isOfOffer(draft, offer)).map((draft) => ofPart(draft, offer));
  const nameOf = claimNamer();
  return drafts.map((draft) => ({ id: nameOf(draft), ...draft }) as Claim);
}

/** The day from which a seller counts back, "last year": that of the listing where the page tells it, else that of the look. */
const writtenAt = ({ posted, readAt }: Listing): string => posted[0]?.value.from ?? readAt;

/** Whether a page speaks of a piece that it offers: a list, an article or an ad of somebody who looks for one does not. */
const isOfPiece = ({ kind }: Listing): boolean => kind === 'listing' || kind === 'cut';

/** Where a part is offered by itself, what is said of nothing else is said of it. */
const ofPart = (draft: ClaimDraft, { part }: Offer): ClaimDraft =>
  part !== null && draft.kind === 'material' && draft.part === 'body' ? { ...draft, part } : draft;

/** "14 C 50 M 37" is a code, and no fifty metres. */
function withoutSizesInCodes(drafts: ClaimDraft[]): ClaimDraft[] {
  const codes = drafts.filter(({ kind }) => kind === 'code');
  return drafts.filter((draft) => draft.kind !== 'measure' || !codes.some((code) => overlap(code, draft)));
}

/** Whether two claims share words of one passage: several replies have the same field, and places of their own. */
function overlap(one: ClaimDraft, other: ClaimDraft): boolean {
  const [start, end] = [Math.max(one.at.start, other.at.start), Math.min(one.at.end, other.at.end)];
  const shared = ({ words, at }: ClaimDraft) => words.slice(start - at.start, end - at.start);
  return one.at.field === other.at.field && start < end && shared(one) === shared(other);
}

/** The page's own data and a row that it shows often say the same: the first that says it stands for both. */
function saidOnce(drafts: ClaimDraft[]): ClaimDraft[] {
  const seen = new Set<string>();
  return drafts.filter((draft) => {
    if (draft.at.field !== 'data') return true;
    const { at, words, confidence, ...says } = draft;
    // What has no value of its own is told apart by its words.
    const key = JSON.stringify(Object.keys(says).length > 1 ? says : [says, words]);
    return !seen.has(key) && seen.add(key);
  });
}
