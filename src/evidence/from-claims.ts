import type { Claim, ClaimOf } from '../claim/types';
import { countryPeriod } from '../place';
import type { Source } from '../source';
import type { Span } from '../span';
import { evidenceId } from './ids';
import { claimedDates, countryDates, isSure } from './room';
import type { Dating } from './types';

/**
 * How a seller's statement becomes evidence (own rule, common practice, no source). A statement is taken at its word:
 * hard means "this must hold if the statement is true", not that it is true.
 *
 * - A year or less ("1994", "March 1994", "spring 1996") and a country of origin are hard, anything wider or hedged is
 *   soft. How far off what is said may be stands in the table of room.
 * - A day of purchase bounds the making from above only.
 * - A country of origin that began or ended dates the piece softly; how far off may be told stands in the table of room.
 * - What was read with little confidence stays soft altogether.
 */
export function fromClaims(claims: readonly Claim[]): Dating[] {
  return claims.flatMap((claim) => {
    if (claim.kind === 'made') return [dated(claim, `claimed-date:${edges(claim.span)}`)];
    if (claim.kind === 'bought' && claim.span.to !== null)
      return [dated(claim, `claimed-purchase:${edges(claim.span)}`)];
    return claim.kind === 'origin' ? [placed(claim), ...existed(claim)] : [];
  });
}

const edges = (span: Span) => `${span.from ?? ''}..${span.to ?? ''}${span.about ? '~' : ''}`;

/** Whose words they are, and the words. */
export const claimSaid = ({ at, words }: Claim): { field: Claim['at']['field']; words: string } => ({
  field: at.field,
  words,
});

export const claimSource = (claim: Claim): Source =>
  claim.at.field === 'user' ? { kind: 'user', as: 'note' } : { kind: 'listing', field: claim.at.field };

function dated(claim: ClaimOf<'made' | 'bought'>, basis: string): Dating {
  return {
    id: evidenceId.claim(claim.id),
    about: 'date',
    from: { kind: 'claim', id: claim.id },
    basis,
    ...claimedDates(claim),
    places: [],
    says: { kind: claim.kind, ...claimSaid(claim) },
    source: claimSource(claim),
  };
}

function placed(claim: ClaimOf<'origin'>): Dating {
  return {
    id: evidenceId.claim(claim.id),
    about: 'place',
    from: { kind: 'claim', id: claim.id },
    basis: `claimed-origin:${claim.place}`,
    spans: [],
    places: [claim.place],
    strength: isSure(claim) ? 'hard' : 'soft',
    says: { kind: 'origin', ...claimSaid(claim) },
    source: claimSource(claim),
  };
}

/**
 * A country that began or ended dates the piece as well: "made in Czechoslovakia" is not of 1998. Soft, because sellers
 * also use today's name for the place of an older piece, and most of the days are from memory.
 */
function existed(claim: ClaimOf<'origin'>): Dating[] {
  const { span, verified, source } = countryPeriod(claim.place);
  if (span.from === null && span.to === null) return [];
  return [
    {
      id: evidenceId.country(claim.id),
      about: 'date',
      from: { kind: 'claim', id: claim.id },
      basis: `claimed-origin:${claim.place}`,
      ...countryDates(span, verified && claim.place.length === 4 && isSure(claim)),
      places: [],
      says: { kind: 'country', ...claimSaid(claim), place: claim.place },
      source: { kind: verified ? 'published' : 'memory', text: source },
    },
  ];
}
