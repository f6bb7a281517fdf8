import type { Offer } from '../claim/offer-types';
import type { Claim } from '../claim/types';
import type { Decoding } from '../code/types';
import type { Reasoning } from '../evidence';
import type { Evidence } from '../evidence/types';
import type { Listing } from '../listing/types';
import type { MakerFile, Model } from '../maker/types';
import type { MarkRead } from '../mark/types';
import type { PhotoRead } from '../photo/read-types';
import { computed, type FactName, type FactValue } from './fact';
import { type Told, tell } from './fact/define';
import { pairs } from './fact/pairs';
import type { PairOf } from './pairs';
import { photoNumberer, whyUnread } from './photo-places';
import { because } from './reasons';
import type { PreviousLook, Reason } from './types';

/** Everything that checks may ask for. Built once for each case; no check sees all of it. */
export interface Facts {
  listing: Listing;
  claims: Claim[];
  /** Whether the listing offers several pieces: what it says of a size or a price may be of another one, or of all. */
  severalPieces: boolean;
  /** What is offered; what holds of a whole bag does not hold of its strap, or of a belt. */
  offer: Offer['kind'];
  decodings: Decoding[];
  photos: PhotoRead[];
  marks: MarkRead[];
  /** The file of the piece's maker, null when none fits. */
  maker: MakerFile | null;
  evidence: Evidence[];
  reasoning: Reasoning;
  /** What the listing said when it was last looked at, null at the first look. */
  previous: PreviousLook | null;
  /** ISO 8601 moment at which the case is judged. */
  now: string;
}

type ClaimKind = Claim['kind'];
/** The fields that a page may leave unsaid. */
export type StatedField = {
  [K in keyof Listing]-?: Listing[K] extends { value: unknown }[] ? K : never;
}[keyof Listing];
type MakerSection = 'stamped' | 'plants' | 'codeSystems' | 'construction' | 'models' | 'numbers' | 'prices' | 'trade';

/**
 * What a check needs. The frame answers "cannot tell" before the check runs when a need is not met:
 * `stated` fields that the page leaves out, a `maker` file that is not there, photos of which none was read.
 */
export interface Needs {
  /** Kinds of claims handed over; none may be there. */
  claims?: readonly ClaimKind[];
  /** Parts of the listing that may be empty. */
  listing?: readonly (keyof Listing)[];
  /** Fields of the listing that must be stated. */
  stated?: readonly StatedField[];
  /** Sections of the maker file; the check does not apply where the file says nothing. */
  maker?: readonly MakerSection[];
  /** `read`: at least one photo was read. `any`: all, read or not. */
  photos?: 'read' | 'any';
  decodings?: true;
  marks?: true;
  evidence?: true;
  reasoning?: true;
  /** How two statements stand to each other by a rule of the reasoning. */
  pairs?: true;
  /** An earlier look at the same listing; the check does not apply at the first look. */
  previous?: true;
  now?: true;
  /** Name of the maker whose file is used, null without a file. */
  makerName?: true;
  /** Models of the maker file, none without a file. */
  models?: true;
  /** Cannot tell where several pieces are on offer: what it looks at may be another one's, or of all. Does not apply to a part, an accessory, packaging. */
  onePiece?: true;
  /** Computed facts (./fact) that have to be known; where one is not, the frame answers with its reason. */
  facts?: readonly FactName[];
  /** Computed facts that may be unknown: they are handed over as they were told. */
  perhaps?: readonly FactName[];
}

type ClaimsBy<K extends ClaimKind> = { [P in K]: Extract<Claim, { kind: P }>[] };
type Given<N, Name extends keyof Facts> = N extends { [P in Name]: true } ? Pick<Facts, Name> : unknown;

/** What a check with the needs `N` is handed of the case as it was read. */
export type HandedAsRead<N extends Needs> = {
  /** The photo's place on the page, from 1; null for one that the page does not list. */
  photoNumber: (photoId: string) => number | null;
} & (N extends { claims: readonly (infer K extends ClaimKind)[] } ? { claims: ClaimsBy<K> } : unknown) &
  (N extends { listing: readonly (infer L extends keyof Listing)[] } ? { listing: Pick<Listing, L> } : unknown) &
  (N extends { stated: readonly (infer S extends StatedField)[] }
    ? { stated: { [P in S]: Listing[P][number] } }
    : unknown) &
  (N extends { maker: readonly (infer M extends MakerSection)[] }
    ? { maker: { name: string; plantsComplete: boolean } & { [P in M]-?: NonNullable<MakerFile[P]> } }
    : unknown) &
  (N extends { photos: 'read' | 'any' } ? { photos: PhotoRead[] } : unknown) &
  Given<N, 'decodings'> &
  Given<N, 'marks'> &
  Given<N, 'evidence'> &
  Given<N, 'reasoning'> &
  (N extends { pairs: true } ? { pairOf: PairOf } : unknown) &
  (N extends { previous: true } ? { previous: PreviousLook } : unknown) &
  Given<N, 'now'> &
  (N extends { makerName: true } ? { makerName: string | null } : unknown) &
  (N extends { models: true } ? { models: Model[] } : unknown);

/** The facts that a check with the needs `N` is handed, and nothing else. */
export type Handed<N extends Needs> = HandedAsRead<N> &
  (N extends { facts: readonly FactName[] } | { perhaps: readonly FactName[] } ? { fact: FactsOf<N> } : unknown);

type FactsOf<N> = (N extends { facts: readonly (infer F extends FactName)[] } ? { [P in F]: FactValue<P> } : unknown) &
  (N extends { perhaps: readonly (infer F extends FactName)[] } ? { [P in F]: Told<FactValue<P>> } : unknown);

/** Why a check could not be handed what it needs. */
export type Unmet = { cannotTell: Reason } | { notApplicable: Reason };

/** Hands over what `needs` names of the case as it was read, or says which need is not met. */
export function handOver(needs: Needs, facts: Facts): { handed: HandedAsRead<Needs> } | Unmet {
  if (needs.onePiece && facts.severalPieces) return { cannotTell: because('several-pieces', {}) };
  if (needs.onePiece && facts.offer !== 'piece')
    return { notApplicable: because('another-offer', { offer: facts.offer }) };
  const handed: Record<string, unknown> = { photoNumber: photoNumberer(facts.listing) };
  if (needs.claims) handed.claims = claimsByKind(needs.claims, facts.claims);
  if (needs.listing) handed.listing = Object.fromEntries(needs.listing.map((name) => [name, facts.listing[name]]));
  const missing = needs.stated?.find((name) => facts.listing[name].length === 0);
  if (missing) return { cannotTell: because('not-stated', { field: missing }) };
  if (needs.stated) handed.stated = Object.fromEntries(needs.stated.map((name) => [name, facts.listing[name][0]]));
  if (needs.maker) {
    if (!facts.maker) return { cannotTell: because('no-maker-file', {}) };
    const file = facts.maker;
    const silent = needs.maker.find((name) => isEmpty(file[name]));
    if (silent) return { notApplicable: because('maker-file-silent', { maker: file.maker, section: silent }) };
    const sections = Object.fromEntries(needs.maker.map((name) => [name, file[name]]));
    handed.maker = { name: file.maker, plantsComplete: file.plantsComplete ?? false, ...sections };
  }
  if (needs.photos) {
    if (needs.photos === 'read' && !facts.photos.some((photo) => photo.state === 'read'))
      return { cannotTell: whyUnread(facts.photos) };
    handed.photos = facts.photos;
  }
  if (needs.pairs) {
    const told = tell(pairs, facts);
    if (!('is' in told)) return told;
    handed.pairOf = told.is;
  }
  if (needs.makerName) handed.makerName = facts.maker?.maker ?? null;
  if (needs.models) handed.models = facts.maker?.models ?? [];
  if (needs.previous) {
    if (!facts.previous) return { notApplicable: because('first-look', {}) };
    handed.previous = facts.previous;
  }
  for (const name of ['decodings', 'marks', 'evidence', 'reasoning', 'now'] as const)
    if (needs[name]) handed[name] = facts[name];
  return { handed: handed as unknown as HandedAsRead<Needs> };
}

/** Hands over the computed facts that `needs` names, or says why one that has to be known is not. */
export function tellFacts({ facts: needed = [], perhaps = [] }: Needs, facts: Facts): Told<object> {
  const values: Partial<Record<FactName, unknown>> = {};
  for (const name of needed) {
    const told = tell<unknown>(computed[name], facts);
    if (!('is' in told)) return told;
    values[name] = told.is;
  }
  for (const name of perhaps) values[name] = tell<unknown>(computed[name], facts);
  return { is: needed.length + perhaps.length > 0 ? { fact: values } : {} };
}

function isEmpty(section: MakerFile[MakerSection]): boolean {
  if (section === undefined) return true;
  return Array.isArray(section) ? section.length === 0 : Object.keys(section).length === 0;
}

function claimsByKind(kinds: readonly ClaimKind[], claims: Claim[]): Record<string, Claim[]> {
  return Object.fromEntries(kinds.map((kind) => [kind, claims.filter((claim) => claim.kind === kind)]));
}
