import * as z from 'zod';
import { evidenceId } from '../evidence';
import { spanSchema } from '../span/types';
import { askFor } from './asks';
import { datedSchema } from './fact/date';
import { defineCheck, makerFileSource, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({
  claimed: z.string(),
  maker: z.string(),
  /** As the file names it. */
  part: z.string(),
  /** What the maker used for the part, and when. */
  is: z.array(z.string()),
  used: z.array(spanSchema),
  /** The words name something else than what the maker used then. */
  other: z.boolean(),
  dated: datedSchema,
});

export const constructionAgainstDate = defineCheck({
  id: 'construction-against-date',
  family: 'construction',
  kinds: ['contradiction', 'doubt', 'agreement'],
  source: makerFileSource,
  data: dataSchema,
  needs: {
    maker: ['construction'],
    claims: ['material', 'replaced'],
    evidence: true,
    pairs: true,
    facts: ['date'],
  },
  unless({ claims }) {
    if (claims.material.length === 0) return because('no-part-material', {});
    const replaced = new Set(claims.replaced.flatMap(({ parts }) => parts));
    if (!claims.material.every(({ part }) => replaced.has(part))) return null;
    return because('parts-replaced', { words: claims.replaced.map(({ words }) => words) });
  },
  run(facts) {
    const { maker, claims, evidence } = facts;
    const dated = facts.fact.date;
    const known = new Map(evidence.map((piece) => [piece.id, piece]));
    return claims.material.flatMap((claim): Speech<z.infer<typeof dataSchema>>[] => {
      const ids = [evidenceId.construction(claim.id), dated.id] as const;
      const kind = pairKind(facts.pairOf('material-date', ...ids));
      const piece = known.get(ids[0]);
      if (!kind || !piece || (piece.says.kind !== 'material' && piece.says.kind !== 'other-material')) return [];
      const { says } = piece;
      const used = says.kind === 'other-material' ? says.used : piece.spans;
      return [
        {
          kind,
          key: claim.id,
          data: {
            claimed: claim.words,
            maker: maker.name,
            part: says.part,
            is: says.is,
            used,
            other: says.kind === 'other-material',
            dated: dated.said,
          },
          photos: dated.photos,
          claims: [claim.id, ...dated.claims],
          evidence: [...ids],
          source: piece.source,
          asks: [askFor('part', { part: claim.part })],
        },
      ];
    });
  },
});
