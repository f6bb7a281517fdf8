import type { Claim, ClaimOf } from '../claim/types';
import { countryPeriod, placeName } from '../place';
import type { Source } from '../source';
import { type Span, spanWords, widenSpan } from '../span';
import { evidenceId } from './ids';
import type { Evidence } from './types';
import { quoted } from './wording';

/**
 * How a seller's statement becomes evidence (own rule, common practice, no source). A statement is taken at its word:
 * hard means "this must hold if the statement is true", not that it is true.
 *
 * - A year or less ("1994", "March 1994", "spring 1996") and a country of origin are hard as they stand.
 * - Anything wider or hedged ("about 1994", "the 1990s", "before 1980", "vintage 1970s to 1980s") is soft as it
 *   stands, and hard only with its edges widened: by `hedgedYears` when hedged, else by `wideYears`. It can so
 *   contradict what lies far outside and never what lies near its edge.
 * - A day of purchase bounds the making from above only.
 * - A country of origin that began or ended dates the piece softly.
 * - What was read with little confidence stays soft altogether.
 */
export const hedgedYears = 5;
export const wideYears = 1;
const leastConfidence = 0.5;
const exactDays = 366;

export function fromClaims(claims: readonly Claim[]): Evidence[] {
  return claims.flatMap((claim) => {
    if (claim.kind === 'made') return dated(claim, claim.span, `claimed-date:${edges(claim.span)}`);
    if (claim.kind === 'bought' && claim.span.to !== null) {
      const before: Span = { ...claim.span, from: null, precision: 'range' };
      return dated(claim, before, `claimed-purchase:${edges(claim.span)}`);
    }
    return claim.kind === 'origin' ? [placed(claim), ...existed(claim)] : [];
  });
}

const edges = (span: Span) => `${span.from ?? ''}..${span.to ?? ''}${span.about ? '~' : ''}`;

const said = { reply: "The seller's reply says", user: 'The note says' } as const;

/** Who says it, with the words: "The listing says “made in 1994”". */
export function claimStatement(claim: Claim): string {
  const { field } = claim.at;
  return `${field === 'reply' || field === 'user' ? said[field] : 'The listing says'} ${quoted(claim.words)}`;
}

export const claimSource = (claim: Claim): Source =>
  claim.at.field === 'user'
    ? { kind: 'user', text: 'your own note' }
    : { kind: 'listing', text: claim.at.field === 'reply' ? "the seller's reply" : `the listing's ${claim.at.field}` };

/** Whether the span names a year or less and is not hedged. Only both ends closed can be exact. */
function isExact(claimed: Span): boolean {
  if (claimed.about || claimed.from === null || claimed.to === null) return false;
  return Date.parse(claimed.to) - Date.parse(claimed.from) < exactDays * 86_400_000;
}

function dated(claim: ClaimOf<'made' | 'bought'>, span: Span, basis: string): Evidence[] {
  const sure = claim.confidence >= leastConfidence;
  const exact = isExact(claim.kind === 'bought' ? claim.span : span);
  const meaning = spanWords(span);
  const statement = claim.words.includes(meaning) ? claimStatement(claim) : `${claimStatement(claim)} (${meaning})`;
  const literal: Evidence = {
    id: evidenceId.claim(claim.id),
    about: 'date',
    from: { kind: 'claim', id: claim.id },
    basis,
    spans: [span],
    places: [],
    strength: sure && exact ? 'hard' : 'soft',
    statement,
    source: claimSource(claim),
  };
  if (!sure || exact) return [literal];
  const widened = widenSpan(span, span.about ? hedgedYears : wideYears);
  const reach = `${statement}: with room for a loose date, ${spanWords(widened)}`;
  return [
    literal,
    { ...literal, id: evidenceId.looseClaim(claim.id), spans: [widened], strength: 'hard', statement: reach },
  ];
}

function placed(claim: ClaimOf<'origin'>): Evidence {
  const name = placeName(claim.place);
  const statement = claim.words.includes(name) ? claimStatement(claim) : `${claimStatement(claim)} (${name})`;
  return {
    id: evidenceId.claim(claim.id),
    about: 'place',
    from: { kind: 'claim', id: claim.id },
    basis: `claimed-origin:${claim.place}`,
    spans: [],
    places: [claim.place],
    strength: claim.confidence >= leastConfidence ? 'hard' : 'soft',
    statement,
    source: claimSource(claim),
  };
}

/**
 * A country that began or ended dates the piece as well: "made in Czechoslovakia" is not of 1998. Soft, because sellers
 * also use today's name for the place of an older piece, and most of the days are from memory.
 */
function existed(claim: ClaimOf<'origin'>): Evidence[] {
  const { span, verified, source } = countryPeriod(claim.place);
  if (span.from === null && span.to === null) return [];
  return [
    {
      id: evidenceId.country(claim.id),
      about: 'date',
      from: { kind: 'claim', id: claim.id },
      basis: `claimed-origin:${claim.place}`,
      spans: [span],
      places: [],
      strength: 'soft',
      statement: `${claimStatement(claim)}, and ${placeName(claim.place)} existed ${spanWords(span)}`,
      source: { kind: verified ? 'published' : 'memory', text: source },
    },
  ];
}
