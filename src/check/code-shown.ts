import * as z from 'zod';
import { evidenceId } from '../evidence';
import { periodSpan } from '../span';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema } from './date-data';
import { atPlaces } from './fact/code-places';
import { defineCheck, fromMakerFile, makerFileSource } from './frame';
import { because } from './reasons';

export const codeShown = defineCheck({
  id: 'code-shown',
  family: 'code',
  kinds: ['gap', 'doubt'],
  source: makerFileSource,
  data: z.strictObject({
    claim: claimedDateSchema,
    maker: z.string(),
    stamped: spanSchema,
    /** The seller's words that there is none. */
    denied: z.string().nullable(),
  }),
  needs: {
    maker: ['stamped'],
    claims: ['made', 'code', 'no-code', 'not-vouched'],
    decodings: true,
    pairs: true,
    perhaps: ['clearPhotos', 'codePlaces'],
  },
  run(facts) {
    const { stamped, name } = facts.maker;
    const period = periodSpan([stamped.from, stamped.to]);
    const claim = facts.claims.made[0];
    if (!claim) return { notApplicable: because('no-date-claimed', {}) };
    const pair = facts.pairOf('stamping-date', evidenceId.stamping, evidenceId.claim(claim.id));
    // Surely, not only perhaps: all that the claim allows lies within the time of stamping.
    if (!period || !(pair?.inside === 'right' || pair?.inside === 'both'))
      return { notApplicable: because('stamping-not-sure', { maker: name, span: claim.span }) };
    if (facts.decodings.length > 0 || facts.claims.code.length > 0) return [];
    const source = fromMakerFile(name, null, stamped.sources);
    const denied = facts.claims['no-code'][0];
    const data = { claim: claimedDate(claim), maker: name, stamped: period, denied: denied?.words ?? null };
    const asks = [askFor('stamp-photo', atPlaces(facts.fact.codePlaces))];
    // Who says to know nothing of such bags denies nothing by not having found a code.
    const knows = !facts.claims['not-vouched'].some(({ polarity }) => polarity === 'is');
    if (denied && knows) return [{ kind: 'doubt', data, claims: [claim.id, denied.id], source, asks }];
    if (!('is' in facts.fact.clearPhotos)) return facts.fact.clearPhotos;
    return [{ kind: 'gap', data, claims: [claim.id], source, asks }];
  },
});
