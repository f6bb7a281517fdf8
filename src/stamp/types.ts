import * as z from 'zod';
import { type Observation, observed } from '../photo/observation-types';
import { type PhotoRead, photoReadWith, seenIn } from '../photo/read-types';

const point = z.strictObject({ x: z.number(), y: z.number() });
/** Corners in pixels of the whole photo, in reading order: top left, top right, bottom right, bottom left. */
export const quadSchema = z.tuple([point, point, point, point]);

/**
 * Per step of a line, the probability of each character, '' being "no new character" (the CTC blank).
 * Every step sums to at most 1; what is missing is spread over characters too unlikely to keep.
 * A recogniser that gives whole characters puts a step `{'': 1}` between them, so that doubled letters stay two.
 */
export const latticeSchema = z.strictObject({
  steps: z.array(z.record(z.string().max(1), z.number().min(0).max(1))),
});
export type Lattice = z.infer<typeof latticeSchema>;

/** A measurement with its standard uncertainty, same unit. */
export const measurementSchema = z.strictObject({
  what: z.enum([
    'pitch',
    'pitch-spread',
    'tilt',
    'baseline-spread',
    'depth-slope',
    'depth-spread',
    'contrast',
    'height',
  ]),
  value: z.number(),
  uncertainty: z.number().nonnegative(),
  unit: z.enum(['px', 'degree', 'share']),
});
export type Measurement = z.infer<typeof measurementSchema>;

/** One stamped line found in a photo. `stampScore`: how likely it is a code stamp and not other text, 0 to 1. */
export const stampLineSchema = z.strictObject({
  id: z.string(),
  photoId: z.string(),
  quad: quadSchema,
  stampScore: z.number().min(0).max(1),
  engine: z.enum(['net', 'tesseract']),
  lattice: latticeSchema,
  /** Best text without any code system, and its probability. */
  free: z.strictObject({ text: z.string(), probability: z.number().min(0).max(1) }),
  measurements: z.array(measurementSchema),
  /**
   * Past an end there is no room in the photo for a further character, or another line goes on there, or its characters
   * part where nothing was read, or only a sign: it may be a part, or hold what is no part of it.
   */
  mayGoOn: z.literal(true).optional(),
  /** What the line spells from its other side, where that is a likely code too and nothing in the photo settles it. */
  otherWay: latticeSchema.optional(),
});
export type StampLine = z.infer<typeof stampLineSchema>;

/** A stamped line among a photo's observations: its text is the value, its corners are where it lies. */
export const stampLineKind = 'stamp-line';
/** What such an observation keeps beside its value and place. */
const stampLineDetailSchema = stampLineSchema
  .omit({ id: true, photoId: true, quad: true, free: true })
  .extend({ probability: z.number().min(0).max(1) });

/** A photo's reading, the details of its stamped lines held against their form. */
export const photoReadSchema = photoReadWith({ [stampLineKind]: stampLineDetailSchema });

export function observedLine({ id, quad, free, photoId, ...rest }: StampLine): Observation {
  const detail: z.infer<typeof stampLineDetailSchema> = { ...rest, probability: free.probability };
  return observed(photoId, stampLineKind, free.text, { id, where: { form: 'quad', points: quad }, detail });
}

/** The stamped lines of a photo, the best first. */
export const stampLinesOf = (read: PhotoRead): StampLine[] =>
  seenIn(read, stampLineKind).flatMap(({ id, value, where, detail }) => {
    if (where?.form !== 'quad' || detail === undefined) return [];
    // Whoever opens a kept case has held its details against their schema.
    const { probability, ...rest } = detail as unknown as z.infer<typeof stampLineDetailSchema>;
    const free = { text: String(value ?? ''), probability };
    return [{ ...rest, id, photoId: read.photoId, quad: where.points, free }];
  });
