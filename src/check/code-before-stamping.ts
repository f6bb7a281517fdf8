import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { evidenceId, isExact, isSure, roomDays } from '../evidence';
import type { MakerFile } from '../maker/types';
import { periodSpan } from '../span';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { claimedDate, claimedDateSchema } from './date-data';
import { daysBefore } from './dates';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { because } from './reasons';

const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  claim: claimedDateSchema,
  maker: z.string(),
  stamped: spanSchema,
});

export const codeBeforeStamping = defineCheck({
  id: 'code-before-stamping',
  family: 'code',
  kinds: ['contradiction', 'doubt'],
  source: makerFileSource,
  data: dataSchema,
  needs: { maker: ['stamped'], claims: ['made'], facts: ['settledCodes'] },
  unless: ({ maker, claims }) =>
    earlyOf(maker.stamped, claims.made) === null ? because('no-date-before-stamping', { maker: maker.name }) : null,
  run(facts) {
    const { stamped, name } = facts.maker;
    const found = earlyOf(stamped, facts.claims.made);
    if (!found) return [];
    const { period, early } = found;
    return facts.fact.settledCodes.flatMap((code) =>
      early.map((claim): Speech<z.infer<typeof dataSchema>> => {
        const sure = code.hard && isSure(claim) && isExact(claim.span);
        const beyond = daysBefore(claim.span, period) > roomDays.makerPeriod;
        return {
          kind: sure && beyond ? 'contradiction' : 'doubt',
          key: `${code.decoding.id}/${claim.id}`,
          data: { shown: code.shown, claim: claimedDate(claim), maker: name, stamped: period },
          photos: code.photos,
          claims: [claim.id],
          evidence: [evidenceId.reading(code.decoding.id)],
          source: fromMakerFile(name, stamped.source),
          asks: [askFor('made-date', {})],
        };
      }),
    );
  },
});

/** The claimed dates before the maker stamped; null where there is none, or one that is not. */
function earlyOf(stamped: NonNullable<MakerFile['stamped']>, made: readonly ClaimOf<'made'>[]) {
  const period = periodSpan([stamped.from, stamped.to]);
  const early = made.filter((claim) => period && daysBefore(claim.span, period) > 0);
  // Where the listing also gives a later date, its dates disagree: another check's doubt.
  return period && early.length > 0 && early.length === made.length ? { period, early } : null;
}
