import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { evidenceId } from '../evidence';
import { periodSpan } from '../span';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import { claimedDate, claimedDateSchema } from './date-data';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';
import { type PairOf, pairKind } from './pairs';
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
  needs: { maker: ['stamped'], claims: ['made'], pairs: true, facts: ['settledCodes'] },
  unless: (facts) =>
    earlyOf(facts).length === 0 ? because('no-date-before-stamping', { maker: facts.maker.name }) : null,
  run(facts) {
    const { stamped, name } = facts.maker;
    const period = periodSpan([stamped.from, stamped.to]);
    if (!period) return [];
    return facts.fact.settledCodes.flatMap((code) =>
      earlyOf(facts).flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
        const evidence = [evidenceId.stamped(code.decoding.id), evidenceId.claim(claim.id)] as const;
        const kind = pairKind(facts.pairOf('stamping-date', ...evidence));
        if (!kind) return [];
        return [
          {
            kind,
            key: `${code.decoding.id}/${claim.id}`,
            data: { shown: code.shown, claim: claimedDate(claim), maker: name, stamped: period },
            photos: code.photos,
            claims: [claim.id],
            evidence: [...evidence, evidenceId.reading(code.decoding.id)],
            source: fromMakerFile(name, null, stamped.sources),
            asks: [askFor('made-date', {})],
          },
        ];
      }),
    );
  },
});

/**
 * The claimed dates, where all of them lie before the maker began to stamp; none where the listing also gives a later
 * one: then its dates disagree, another check's doubt.
 */
function earlyOf({ claims: { made }, pairOf }: { claims: { made: ClaimOf<'made'>[] }; pairOf: PairOf }) {
  const isEarly = ({ id }: ClaimOf<'made'>) =>
    pairOf('stamping-date', evidenceId.stampingBegun, evidenceId.claim(id))?.relation === 'conflicts';
  return made.every(isEarly) ? made : [];
}
