import type { Claim } from '../claim/types';
import { evidenceId, isExact } from '../evidence';
import { type Span, spanWords } from '../span';
import { datingReadings, settledCodes } from './codes';
import { claimWords } from './dates';

/** The date that other facts are held against: the code's when one is read, else the claimed one. */
export interface Dated {
  /** Alternatives: any of them may hold. */
  spans: Span[];
  /** "the stamp in photo 1 reads KV0915 (January 1995)" or "it is said to be of “made in 1994”" */
  words: string;
  /** The code was seen, or the claim is exact. */
  hard: boolean;
  claims: string[];
  photos: string[];
  /** What of the code is evidence; that of a claim follows from `claims`. */
  evidence: string[];
}

type DateFacts = Parameters<typeof settledCodes>[0] & {
  claims: { made: Extract<Claim, { kind: 'made' }>[] };
};

/** Null when neither a code under a system of `maker` nor the listing gives a date. */
export function dateOf(facts: DateFacts, maker: string | null): Dated | null {
  const settled = maker === null ? null : settledCodes(facts, maker);
  for (const code of settled && 'codes' in settled ? settled.codes : []) {
    const spans = datingReadings(code).flatMap(({ span }) => (span ? [span] : []));
    const first = spans[0];
    if (first)
      return {
        spans,
        words: `${code.words} (${spanWords(first)})`,
        hard: code.hard,
        claims: [],
        photos: code.photos,
        evidence: [evidenceId.reading(code.decoding.id)],
      };
  }
  const claim = facts.claims.made[0];
  if (!claim) return null;
  const words = `it is said to be of ${claimWords(claim)}`;
  return { spans: [claim.span], words, hard: isExact(claim.span), claims: [claim.id], photos: [], evidence: [] };
}
