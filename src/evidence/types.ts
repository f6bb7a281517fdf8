import * as z from 'zod';
import { sourceSchema, strengthSchema } from '../source';
import { spanSchema } from '../span/types';
import { saysSchema } from './says';

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
  /** Dates within which nothing conflicts with it; the spans themselves unless given. */
  reach: z.array(spanSchema).optional(),
  /** Dates beyond which a conflict with it is hard, null for never; unless given the reach of what is hard. */
  hardReach: z.array(spanSchema).nullable().optional(),
  places: z.array(z.string()),
  strength: strengthSchema,
  says: saysSchema,
  source: sourceSchema,
});
export type Evidence = z.infer<typeof evidenceSchema>;

/** The part of it that a sentence is made of. */
export const statedSchema = evidenceSchema.pick({ says: true, spans: true, places: true });
export type Stated = z.infer<typeof statedSchema>;
export const statedOf = ({ says, spans, places }: Evidence): Stated => ({ says, spans, places });
