import { runChecks } from '../check';
import type { Finding, PreviousLook } from '../check/types';
import { type Claim, findClaims, judgingFiles, offerOf, statedMaker } from '../claim';
import { gatherEvidence, reason } from '../evidence';
import type { Listing } from '../listing/types';
import { inForce } from '../maker';
import type { MakerFile } from '../maker/types';
import { ciede2000 } from '../photo';
import type { PhotoRead } from '../photo/read-types';
import { askQuestions } from '../question';
import { applyCorrections, correctedClaims, uncorrectedClaims, unmetCorrections } from './corrected';
import { codesByHand } from './correction';
import type { Correction } from './correction-types';
import { decodeAll, isOnlyShown } from './decodings';
import { caseLotOf, codesOfPiece, judgingClaims } from './lot';
import { madeOnce } from './made-once';
import { marksOf } from './marks';
import { measuredByHand } from './measured';
import { ofPage, withSentPhotos } from './sent-photos';
import { standingFindings, unmetAside } from './set-aside';
import { allPhotos, skippedOf } from './skipped';
import { codesNotElsewhere, stampsPlaced } from './stamp-piece';
import type { Case, Reply, SentPhoto } from './types';

export interface CaseInput {
  listing: Listing;
  /** Photos read so far; the listing's other photos count as unread. */
  photos: PhotoRead[];
  /** What the buyer set right, added or struck. */
  corrections: Correction[];
  makers: readonly MakerFile[];
  /** What the seller replied, the first first. */
  replies?: readonly Reply[] | undefined;
  /** Photos of the piece that no page shows. */
  sent?: readonly SentPhoto[] | undefined;
  /** ISO 8601 moment at which the case is judged. */
  now: string;
  /** The look before this one; changes are told only with it. */
  previous?: PreviousLook | undefined;
}

/**
 * Joins what was read into one Case: claims, maker, codes, marks, evidence, checks, questions. Pure and synchronous:
 * the same input gives the same case, so that a case on disk can be recomputed from its own `listing`, `photos` and
 * `corrections` with the same maker files.
 */
export function buildCase(input: CaseInput): Case {
  const { photos, corrections, makers, replies = [], sent = [], now, previous } = input;
  const listing = withSentPhotos(input.listing, sent);
  const files = makers.map(inForce);
  const corrected = applyCorrections({ listing, photos, claims: claimsIn(listing, files, replies), corrections });
  const { claims } = corrected;
  const lot = caseLotOf({ listing, claims, corrections });
  const judging = judgingClaims(lot ? { claims, lot } : { claims });
  // What the buyer left out now was not taken back by the seller.
  const before = previous && { ...previous, claims: correctedClaims(previous.claims, corrections) };
  const stated = statedMaker(claims, files);
  const maker = stated?.file ?? null;
  const shown = allPhotos(listing, corrected.photos);
  const read = decodeAll({
    photos: shown,
    claims: judging,
    typed: codesByHand(corrections),
    makers: judgingFiles(stated, files),
    maker: maker?.maker ?? null,
    names: [...files.flatMap((file) => [file.maker, ...file.aliases]), ...(stated?.names ?? [])],
    now,
  });
  const placed = stampsPlaced({ listing, photos: shown, corrections });
  const decodings = codesNotElsewhere(read, lot?.chosen ?? null, placed);
  const marks = marksOf(listing, shown);
  const offer = offerOf(listing, claims).kind;
  // Marks, too, may stand on another piece than the one that is spoken of.
  const ofPiece = { decodings: codesOfPiece(decodings, lot), marks: lot ? [] : marks };
  const observations = measuredByHand({ listing, photos, corrections });
  const evidence = gatherEvidence({
    claims: judging,
    measured: { observations, apart: ciede2000 },
    maker,
    listing,
    severalPieces: lot !== null || offer !== 'piece',
    now,
    ...ofPiece,
  });
  const reasoning = reason(evidence);
  const facts = {
    listing,
    claims: judging,
    severalPieces: lot !== null,
    offer,
    decodings: decodings.filter((one) => !isOnlyShown(one)),
    marks,
    maker,
    evidence,
    reasoning,
    now,
  };
  const outcomes = runChecks({
    ...facts,
    photos: shown,
    previous: before ? ofThosePieces(before, claims, judging) : null,
  });
  const findings = standingFindings({ corrections, outcomes });
  const allRead = shown.every(({ state }) => state === 'read');
  return {
    format: 1,
    listing,
    photos,
    corrections,
    judgedAt: now,
    ...(replies.length > 0 ? { replies: [...replies] } : {}),
    ...(sent.length > 0 ? { sent: [...sent] } : {}),
    ...(before ? { previous: before } : {}),
    maker: maker?.maker ?? null,
    ...(maker?.invented ? { makerInvented: true } : {}),
    claims,
    ...(lot ? { lot } : {}),
    decodings,
    marks,
    evidence,
    reasoning,
    outcomes,
    questions: askQuestions(findings, judging),
    ...(observations.length > 0 ? { observations } : {}),
    summary: summaryOf(findings),
    skipped: [
      ...skippedOf({ listing, photos: shown, maker: maker?.maker ?? null, makerNames: stated?.names ?? [] }),
      ...unmetCorrections(corrected),
      ...(allRead ? unmetAside({ corrections, outcomes }) : []),
    ],
  };
}

/** What the earlier look said, without what is still said and does not count for the piece: it has not changed. */
function ofThosePieces(before: PreviousLook, claims: readonly Claim[], judging: readonly Claim[]): PreviousLook {
  const counts = new Set(judging.map(({ id }) => id));
  const passedOver = new Set(claims.flatMap(({ id }) => (counts.has(id) ? [] : [id])));
  return { ...before, claims: before.claims.filter(({ id }) => !passedOver.has(id)) };
}

function summaryOf(findings: Finding[]): Case['summary'] {
  const count = (kind: Finding['kind']) => findings.filter((finding) => finding.kind === kind).length;
  return {
    contradictions: count('contradiction'),
    doubts: count('doubt'),
    gaps: count('gap'),
    agreements: count('agreement'),
  };
}

/** What a look at this listing gives a later one to compare with, its claims read by these maker files. */
export const previousOf = (
  listing: Listing,
  makers: readonly MakerFile[],
  replies: readonly Reply[] = [],
): PreviousLook => lookAt({ listing, claims: [...claimsIn(listing, makers.map(inForce), replies)], corrections: [] });

const claimsIn = (listing: Listing, makers: MakerFile[], replies: readonly Reply[]): readonly Claim[] =>
  claimsOnce(
    listing,
    makers,
    replies.map(({ text }) => text),
  );

const claimsOnce = madeOnce((listing: Listing, makers: MakerFile[], replies: readonly string[]): readonly Claim[] =>
  findClaims(listing, makers, replies),
);

/** What a later look compares with. */
export const lookAt = ({
  listing,
  claims,
  corrections,
}: Pick<Case, 'listing' | 'claims' | 'corrections'>): PreviousLook => ({
  readAt: listing.readAt,
  title: listing.title[0]?.value ?? null,
  description: listing.description[0]?.value ?? null,
  price: listing.price[0]?.value ?? null,
  seller: listing.seller.name[0]?.value ?? null,
  photos: ofPage(listing).photos.map(({ id, url }) => ({ id, url })),
  claims: uncorrectedClaims(claims, corrections),
});
