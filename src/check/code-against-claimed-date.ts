import * as z from 'zod';
import type { Reading } from '../code/types';
import { evidenceId } from '../evidence';
import type { Span } from '../span';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { readingSaidSchema, readingsSaid, shownCodeSchema } from './code-data';
import { claimedDate, claimedDateSchema } from './date-data';
import type { DatedClaim } from './dates';
import { datingReadings } from './fact/settled-codes';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  readings: z.array(readingSaidSchema),
  /** The system of the likeliest reading, and the date that it gives. */
  system: z.string(),
  date: spanSchema,
  claim: claimedDateSchema,
  /** The claim holds all that the code allows, and not the other way round. */
  inside: z.boolean(),
});

const dated = (readings: Reading[]): Span[] => readings.flatMap(({ span }) => (span ? [span] : []));

export const codeAgainstClaimedDate = defineCheck({
  id: 'code-against-claimed-date',
  family: 'code',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: makerFileSource,
  data: dataSchema,
  needs: { maker: ['codeSystems'], claims: ['made', 'bought'], pairs: true, facts: ['settledCodes'] },
  unless: ({ claims }) => (claims.made.length + claims.bought.length === 0 ? because('no-date-claimed', {}) : null),
  run(facts) {
    const claims: DatedClaim[] = [...facts.claims.made, ...facts.claims.bought];
    const readable = facts.fact.settledCodes.flatMap((code) => {
      const readings = datingReadings(code);
      const [first, spans] = [readings[0], dated(readings)];
      return first && spans[0] ? [{ ...code, readings, first, date: spans[0] }] : [];
    });
    if (readable.length === 0) return { cannotTell: because('no-dating-code', {}) };
    return readable.flatMap(({ decoding, readings, first, date, shown, photos }) => {
      const evidence = evidenceId.reading(decoding.id);
      return claims.flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
        const pair = facts.pairOf('claimed-date-code', evidenceId.claim(claim.id), evidence);
        const kind = pairKind(pair);
        if (!pair || !kind) return [];
        return [
          {
            kind,
            key: `${decoding.id}/${claim.id}`,
            data: {
              shown,
              readings: readingsSaid(readings),
              system: first.system.id,
              date,
              claim: claimedDate(claim),
              inside: pair.inside === 'right' || pair.inside === 'both',
            },
            photos,
            claims: [claim.id],
            evidence: [evidence],
            source: fromMakerFile(facts.maker.name, { of: 'code-systems' }, first.system.source),
            asks: [askFor('made-date', {})],
          },
        ];
      });
    });
  },
});
