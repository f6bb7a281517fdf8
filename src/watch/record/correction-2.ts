import * as z from 'zod';
import { correction1 } from './correction-1';

const id = z.string().min(1).max(40);

/** One thing that the buyer set right, added, struck, set aside or chose. */
export const correction2 = z.discriminatedUnion('of', [
  ...correction1.options,
  z.strictObject({
    id,
    of: z.literal('finding'),
    target: z.strictObject({
      id: z.string(),
      check: z.string(),
      kind: z.enum(['contradiction', 'doubt', 'gap', 'agreement']),
      data: z.record(z.string(), z.json()),
    }),
    reason: z.string().min(1).max(1000),
  }),
  z.strictObject({
    id,
    of: z.literal('piece'),
    among: z.array(z.string()).min(2).max(12),
    to: z.string().nullable(),
  }),
]);
