import * as z from 'zod';
import type { ClaimOf } from '../claim/types';
import { evidenceId, isSaying, isSure } from '../evidence';
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
  /** The part is a later one, as the seller says with these words. */
  later: z.strictObject({ words: z.string(), span: spanSchema.nullable(), invoice: z.boolean() }).optional(),
});
type Data = z.infer<typeof dataSchema>;

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
  unless({ claims, evidence }) {
    if (claims.material.length === 0) return because('no-part-material', {});
    const replaced = new Set(claims.replaced.flatMap(({ parts }) => parts));
    if (!claims.material.every(({ part }) => replaced.has(part)) || evidence.some(isLater)) return null;
    return because('parts-replaced', { words: claims.replaced.map(({ words }) => words) });
  },
  run(facts) {
    const { maker, claims, evidence } = facts;
    const dated = facts.fact.date;
    const known = new Map(evidence.map((piece) => [piece.id, piece]));
    return claims.material.flatMap((claim): Speech<Data>[] => {
      const ids = [evidenceId.construction(claim.id), dated.id] as const;
      const piece = known.get(ids[0]);
      if (!piece) return [];
      const common = { claimed: claim.words, maker: maker.name };
      const about = { photos: dated.photos, evidence: [...ids], source: piece.source };
      if (isLater(piece)) {
        // What is not of the piece's time stands against nothing where the seller says that the part is later.
        const event = claims.replaced.find((one) => one.parts.includes(claim.part) && isOther(one));
        if (!event || facts.pairOf('later-material-date', ...ids)?.relation !== 'conflicts') return [];
        const { part, is, used, other } = piece.says;
        const later = { words: event.words, span: event.span ?? null, invoice: event.invoice ?? false };
        const named = [claim.id, event.id, ...dated.claims];
        return [
          {
            kind: 'agreement',
            key: claim.id,
            data: { ...common, part, is, used, other, dated: dated.said, later },
            claims: named,
            ...about,
          },
        ];
      }
      const kind = pairKind(facts.pairOf('material-date', ...ids));
      if (!kind || (piece.says.kind !== 'material' && piece.says.kind !== 'other-material')) return [];
      const { says } = piece;
      const used = says.kind === 'other-material' ? says.used : piece.spans;
      const other = says.kind === 'other-material';
      return [
        {
          kind,
          key: claim.id,
          data: { ...common, part: says.part, is: says.is, used, other, dated: dated.said },
          claims: [claim.id, ...dated.claims],
          ...about,
          asks: [askFor('part', { part: claim.part })],
        },
      ];
    });
  },
});

const isLater = isSaying('later-material');

/** Another part was put in, and the seller knows it; one that was mended or dyed is the old one. */
const isOther = (event: ClaimOf<'replaced'>) => isSure(event) && (event.how === undefined || event.how === 'relined');
