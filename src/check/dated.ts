import * as z from 'zod';
import type { Claim } from '../claim/types';
import { evidenceId } from '../evidence';
import type { Span } from '../span';
import { spanSchema } from '../span/types';
import { shownCodeSchema } from './code-data';
import { datingReadings, settledCodes } from './codes';
import { claimedDate, claimedDateSchema } from './date-data';

/** A date as a sentence names it: that of a code that is read, or the one claimed. */
export const datedSchema = z.union([
  z.strictObject({ shown: shownCodeSchema, date: spanSchema }),
  z.strictObject({ claim: claimedDateSchema }),
]);
export type DatedSaid = z.infer<typeof datedSchema>;

/** The date that other facts are held against: the code's when one is read, else the claimed one. */
export interface Dated {
  /** Id of its evidence. */
  id: string;
  /** Alternatives: any of them may hold. */
  spans: Span[];
  said: DatedSaid;
  claims: string[];
  photos: string[];
}

type DateFacts = Parameters<typeof settledCodes>[0] & {
  claims: { made: Extract<Claim, { kind: 'made' }>[] };
};

/** Null when neither a code under a system of `maker` nor the listing gives a date. */
export function dateOf(facts: DateFacts, maker: string | null): Dated | null {
  const settled = maker === null ? null : settledCodes(facts, maker);
  for (const code of settled && 'codes' in settled ? settled.codes : []) {
    const spans = datingReadings(code).flatMap(({ span }) => (span ? [span] : []));
    const [date] = spans;
    if (date)
      return {
        id: evidenceId.reading(code.decoding.id),
        spans,
        said: { shown: code.shown, date },
        claims: [],
        photos: code.photos,
      };
  }
  const claim = facts.claims.made[0];
  if (!claim) return null;
  return {
    id: evidenceId.claim(claim.id),
    spans: [claim.span],
    said: { claim: claimedDate(claim) },
    claims: [claim.id],
    photos: [],
  };
}
