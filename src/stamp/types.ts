import * as z from 'zod';
import { problemSchema } from '../problem';

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
  /** Past an end there is no room in the photo for a further character, or another line goes on there: it may be a part. */
  mayGoOn: z.literal(true).optional(),
  /** What the line spells from its other side, where that is a likely code too and nothing in the photo settles it. */
  otherWay: latticeSchema.optional(),
});
export type StampLine = z.infer<typeof stampLineSchema>;

export const sizePxSchema = z.strictObject({ width: z.number().int().positive(), height: z.number().int().positive() });

/**
 * How a photo's pixels came: its file, fetched by the page or by the background, or a `capture`, a picture of the page
 * as it shows the photo. `fullSize`: nothing larger of this photo is known. `part`: the page showed only a part of it.
 * `largest`: pixels of the version on the page, where they are known. `ledOn`: its address leads on to another, which is
 * not followed, so that the right to its host would bring nothing.
 */
export const cameSchema = z.discriminatedUnion('way', [
  z.strictObject({ way: z.literal('page'), fullSize: z.boolean() }),
  z.strictObject({ way: z.literal('background'), fullSize: z.boolean() }),
  z.strictObject({
    way: z.literal('capture'),
    fullSize: z.boolean(),
    part: z.boolean(),
    largest: sizePxSchema.nullable(),
    ledOn: z.literal(true).optional(),
  }),
]);
export type Came = z.infer<typeof cameSchema>;

/** What was read from one photo. `printed` is ordinary print (labels, tags), line by line. */
export const photoReadSchema = z.discriminatedUnion('state', [
  z.strictObject({
    state: z.literal('read'),
    photoId: z.string(),
    width: z.number().int().positive(),
    height: z.number().int().positive(),
    lines: z.array(stampLineSchema),
    printed: z.array(z.string()),
    /** 64-bit difference hash, 16 hex digits: the same photo seen again. */
    hash: z.string(),
    /** Sharpness and size are too low to say that no stamp is shown. */
    tooWeak: z.boolean(),
    /** The strip along the edges, steps of 255 (`Background` in src/photo); absent in cases kept before it was measured. */
    background: z
      .strictObject({
        lightness: z.number().min(0).max(255),
        spread: z.number().min(0).max(255),
        noise: z.number().min(0).max(255),
      })
      .optional(),
    /** Absent for a file that was at hand, and in cases kept before it was told. */
    came: cameSchema.optional(),
  }),
  z.strictObject({ state: z.literal('unread'), photoId: z.string(), problem: problemSchema }),
]);
export type PhotoRead = z.infer<typeof photoReadSchema>;
