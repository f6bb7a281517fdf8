import type { Claim, ClaimOf } from '../claim/types';
import type { Decoding } from '../code/types';
import type { Condition, Listing } from '../listing/types';
import { plainName } from '../maker';
import { commonPractice } from '../source';
import { bareCode } from './bare-code';
import { claimSource } from './from-claims';
import { evidenceId } from './ids';
import { textsLeftOpen } from './texts-left-open';
import type { EvidenceAbout } from './types';

type Quality = EvidenceAbout<'quality'>;
/** What of a page says how the piece is. */
export type DescribedListing = Pick<Listing, 'condition'>;

const plain: Pick<Quality, 'about' | 'spans' | 'places' | 'strength' | 'source'> = {
  about: 'quality',
  spans: [],
  places: [],
  strength: 'soft',
  source: commonPractice,
};
/** Statements of one kind that are gathered at most: a page full of them is not compared pair by pair. */
const mostOfOneKind = 20;

/**
 * What the seller says of how the piece is, and which code it carries: one of the words that there are for it, or several
 * of which any may hold. What is said again in the same words is the same statement.
 */
export function fromQualities(
  claims: readonly Claim[],
  { condition }: DescribedListing,
  decodings: readonly Decoding[],
): Quality[] {
  const said = [
    ...calledNew(claims, condition),
    ...calledUsed(claims),
    ...claims.flatMap((claim) => (claim.kind === 'leather' && claim.polarity === 'is' ? [leather(claim)] : [])),
    ...claims.flatMap((claim) => (claim.kind === 'metal' && claim.polarity === 'is' ? [metal(claim)] : [])),
    ...claims.flatMap((claim) => (claim.kind === 'maker' ? [makerName(claim)] : [])),
  ];
  const bases = new Set<string>();
  const counted = new Map<string, number>();
  const first = said.filter(({ basis, says: { kind } }) => {
    if (bases.has(basis)) return false;
    bases.add(basis);
    const before = counted.get(kind) ?? 0;
    counted.set(kind, before + 1);
    return before < mostOfOneKind;
  });
  return [...first, ...decodings.flatMap(codeText)];
}

const stating = (claim: Claim, basis: string, quality: Quality['quality'], says: Quality['says']): Quality => ({
  ...plain,
  id: evidenceId.quality(claim.id),
  from: { kind: 'claim', id: claim.id },
  basis,
  quality,
  says,
  source: claimSource(claim),
});

const fresh: readonly Condition[] = ['new', 'unused'];
const newState = { of: 'state', is: ['new'] };
const usedState = { of: 'state', is: ['used'] };

/** The seller's own word for new; without one that of the page's field. */
function calledNew(claims: readonly Claim[], condition: Listing['condition']): Quality[] {
  const claim = claims.find((one) => one.kind === 'condition' && fresh.includes(one.condition));
  if (claim) {
    const says = { kind: 'called-new', words: claim.words, inData: claim.at.field === 'data' } as const;
    return [stating(claim, 'called-new', newState, says)];
  }
  const field = condition.find(({ value }) => fresh.includes(value));
  if (!field) return [];
  const inData = field.words === undefined || field.origin !== 'visible';
  return [
    {
      ...plain,
      id: evidenceId.conditionField,
      from: { kind: 'listing', id: 'condition' },
      basis: 'called-new',
      quality: newState,
      says: { kind: 'called-new', words: field.words ?? field.value, inData },
      source: { kind: 'listing', field: 'data' },
    },
  ];
}

const worn: readonly Condition[] = ['used', 'worn', 'damaged'];

/**
 * Words for use and wear, those for the whole piece first. A marketplace's field calls everything used that had an owner:
 * only the seller's own words count. What is denied in one place is not held against the piece in another: it may be
 * said of something else there.
 */
function calledUsed(claims: readonly Claim[]): Quality[] {
  const low = (words: string) => words.toLowerCase();
  const wear = claims.filter((claim) => claim.kind === 'wear');
  const denied = new Set(wear.flatMap(({ polarity, words }) => (polarity === 'is-not' ? [low(words)] : [])));
  const whole = claims.filter(
    (claim) => claim.kind === 'condition' && claim.at.field !== 'data' && worn.includes(claim.condition),
  );
  const signs = wear.filter(
    ({ polarity, words, fromLying }) => polarity === 'is' && !fromLying && !denied.has(low(words)),
  );
  return [...whole, ...signs].map((claim) =>
    stating(claim, `called-used:${low(claim.words)}`, usedState, { kind: 'called-used', words: claim.words }),
  );
}

/** A bag of leather may have a lining that is none: each is said of its own part, or of the piece. */
const leather = (claim: ClaimOf<'leather'>): Quality => {
  const of = claim.inPart ? 'some part' : (claim.of ?? 'piece');
  const quality = { of: `leather of ${of}`, is: [claim.real ? 'leather' : 'imitation'] };
  const says = { kind: claim.real ? 'leather' : 'imitation', words: claim.words, of: claim.of } as const;
  return stating(claim, `${says.kind}:${claim.of}`, quality, says);
};

/**
 * What is plated with a metal, or of its tone, is of any other metal within; of an alloy of zinc nothing is solid. Each
 * part may be of its own metal.
 */
const metal = (claim: ClaimOf<'metal'>): Quality => {
  const within = ['gold', 'silver', 'brass', 'zinc'].filter((one) => one !== claim.metal);
  const is = claim.solid || claim.metal === 'zinc' ? [claim.metal] : within;
  const kind = claim.solid ? 'solid-metal' : 'other-metal';
  const says = { kind, words: claim.words, of: claim.of, metal: claim.metal } as const;
  return stating(claim, `${says.kind}:${claim.metal}:${claim.of}`, { of: `metal of ${claim.of ?? 'piece'}`, is }, says);
};

const makerName = (claim: ClaimOf<'maker'>): Quality => {
  const name = plainName(claim.maker);
  return stating(claim, `maker:${name}`, { of: 'maker', is: [name] }, { kind: 'maker-name', maker: claim.maker });
};

/**
 * A code as it is read or quoted, without separators, and with look-alike characters settled by the system where one
 * reads it. Where a character is left open it is each of the texts that it may be.
 */
function codeText({ id, from, code, readings, accepted, open = [] }: Decoding): Quality[] {
  if (from.kind !== 'claim' && !accepted) return [];
  const text = readings[0]?.text ?? code;
  const is = (readings.length > 0 ? [text] : textsLeftOpen(code, open)).map(bareCode);
  return [
    {
      ...plain,
      id: evidenceId.codeText(id),
      from: { kind: 'code', id },
      basis: `code-text:${id}`,
      quality: { of: 'code', is },
      says: { kind: from.kind === 'claim' ? 'quoted-code' : 'shown-code', code: text },
    },
  ];
}
