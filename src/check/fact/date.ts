import * as z from 'zod';
import { evidenceId } from '../../evidence';
import type { Span } from '../../span';
import { spanSchema } from '../../span/types';
import { shownCodeSchema } from '../code-data';
import { claimedDate, claimedDateSchema } from '../date-data';
import { because } from '../reasons';
import { defineFact } from './define';
import { datingReadings, settledCodes } from './settled-codes';

/** A date as a sentence names it: that of a code that is read, or the one claimed. */
export const datedSchema = z.union([
  z.strictObject({ shown: shownCodeSchema, date: spanSchema }),
  z.strictObject({ claim: claimedDateSchema }),
]);
export type DatedSaid = z.infer<typeof datedSchema>;

/** The date that other facts are held against. */
export interface Dated {
  /** Id of its evidence. */
  id: string;
  /** Alternatives: any of them may hold. */
  spans: Span[];
  said: DatedSaid;
  claims: string[];
  photos: string[];
}

/** The date of the piece: its code's where one is read under the maker's systems, else the one that is claimed. */
export const date = defineFact<Dated>(({ claims }, ask) => {
  const settled = ask(settledCodes);
  for (const code of 'is' in settled ? settled.is : []) {
    const spans = datingReadings(code).flatMap(({ span }) => (span ? [span] : []));
    const [first] = spans;
    if (!first) continue;
    const id = evidenceId.reading(code.decoding.id);
    return { is: { id, spans, said: { shown: code.shown, date: first }, claims: [], photos: code.photos } };
  }
  const claim = claims.find((one) => one.kind === 'made');
  if (!claim) return { cannotTell: because('no-date-known', {}) };
  const id = evidenceId.claim(claim.id);
  return { is: { id, spans: [claim.span], said: { claim: claimedDate(claim) }, claims: [claim.id], photos: [] } };
});
