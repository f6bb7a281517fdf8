import * as z from 'zod';
import { came1, lattice1, measurement1, unread1 } from './photo-read-1';

const point = z.strictObject({ x: z.number(), y: z.number() });

export const where1 = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('point'), points: z.tuple([point]) }),
  z.strictObject({ form: z.literal('line'), points: z.tuple([point, point]) }),
  z.strictObject({ form: z.literal('quad'), points: z.tuple([point, point, point, point]) }),
  z.strictObject({ form: z.literal('polygon'), points: z.array(point).min(3) }),
]);

const observation = z.strictObject({
  id: z.string(),
  what: z.string(),
  value: z.union([z.number(), z.string(), z.boolean(), z.null()]),
  uncertainty: z.number().nonnegative().nullable(),
  unit: z.enum(['px', 'degree', 'share', 'step']).nullable(),
  where: where1.nullable(),
  by: z.enum(['machine', 'hand']),
  detail: z.json().optional(),
});

const stampLineDetail = z.strictObject({
  stampScore: z.number().min(0).max(1),
  engine: z.enum(['net', 'tesseract']),
  lattice: lattice1,
  measurements: z.array(measurement1),
  mayGoOn: z.literal(true).optional(),
  otherWay: lattice1.optional(),
  probability: z.number().min(0).max(1),
});

export const read2 = z.strictObject({
  state: z.literal('read'),
  photoId: z.string(),
  width: z.number().int().positive(),
  height: z.number().int().positive(),
  observations: z.array(observation),
  came: came1.optional(),
});

/** The details of a photo's stamped lines have a form of their own. */
export function holdLines2(read: z.infer<typeof read2> | { state: 'unread' }, context: z.RefinementCtx): void {
  if (read.state === 'unread') return;
  for (const [index, { what, detail }] of read.observations.entries()) {
    if (what !== 'stamp-line') continue;
    for (const issue of stampLineDetail.safeParse(detail).error?.issues ?? [])
      context.addIssue({ ...issue, path: ['observations', index, 'detail', ...issue.path] } as never);
  }
}

/** A photo's reading as a list of observations. */
export const photoRead2 = z.discriminatedUnion('state', [read2, unread1]).superRefine(holdLines2);
