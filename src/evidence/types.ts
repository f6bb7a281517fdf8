import * as z from 'zod';
import { sourceSchema, strengthSchema } from '../source';
import { spanSchema } from '../span/types';

/**
 * One statement on the piece. `spans` (any of them) and `places` (any of them) are what it allows; empty says
 * nothing. `basis` groups statements that come from the same fact, so that a fact repeated is not counted twice.
 */
export const evidenceSchema = z.strictObject({
  id: z.string(),
  about: z.enum(['date', 'place', 'date-and-place']),
  from: z.strictObject({
    kind: z.enum(['claim', 'reading', 'mark', 'construction', 'system', 'plant']),
    id: z.string(),
  }),
  basis: z.string(),
  spans: z.array(spanSchema),
  places: z.array(z.string()),
  strength: strengthSchema,
  statement: z.string(),
  source: sourceSchema,
});
export type Evidence = z.infer<typeof evidenceSchema>;
