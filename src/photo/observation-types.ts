import * as z from 'zod';

const point = z.strictObject({ x: z.number(), y: z.number() });

/** A place in a photo, in its pixels (`Point` in ./types). A quad has its corners in reading order, from the top left. */
export const whereSchema = z.discriminatedUnion('form', [
  z.strictObject({ form: z.literal('point'), points: z.tuple([point]) }),
  z.strictObject({ form: z.literal('line'), points: z.tuple([point, point]) }),
  z.strictObject({ form: z.literal('quad'), points: z.tuple([point, point, point, point]) }),
  z.strictObject({ form: z.literal('polygon'), points: z.array(point).min(3) }),
]);
export type Where = z.infer<typeof whereSchema>;

/** `step`: one of the 255 steps of brightness. */
const unitSchema = z.enum(['px', 'degree', 'share', 'step']);

/** One thing seen or measured in a photo. */
export const observationSchema = z.strictObject({
  /** The photo's id and what was seen; one of its kind in a case, and the same when the photo is read again. */
  id: z.string(),
  what: z.string(),
  /** Null: not measured. */
  value: z.union([z.number(), z.string(), z.boolean(), z.null()]),
  /** Half-width within which the true value lies in 95 of 100 cases; null where none is known. */
  uncertainty: z.number().nonnegative().nullable(),
  unit: unitSchema.nullable(),
  where: whereSchema.nullable(),
  by: z.enum(['machine', 'hand']),
  /** What its reader keeps for whoever works on with it; its form is the reader's. */
  detail: z.json().optional(),
});
export type Observation = z.infer<typeof observationSchema>;

/** The same whenever the photo is read again; the first of a kind carries no number. */
const observationId = (photoId: string, what: string, number = 1): string =>
  number === 1 ? `${photoId}-${what}` : `${photoId}-${what}-${number}`;

/** What a machine saw, named and signed; what is left out of the rest is not known. */
export const observed = (
  photoId: string,
  what: string,
  value: Observation['value'],
  rest: Partial<Observation> = {},
  number = 1,
): Observation => ({
  id: observationId(photoId, what, number),
  what,
  value,
  uncertainty: null,
  unit: null,
  where: null,
  by: 'machine',
  ...rest,
});
