import * as z from 'zod';
import { problem1 } from './forms-1';

const point = z.strictObject({ x: z.number(), y: z.number() });
export const quad1 = z.tuple([point, point, point, point]);
export const lattice1 = z.strictObject({
  steps: z.array(z.record(z.string().max(1), z.number().min(0).max(1))),
});
export const measurement1 = z.strictObject({
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

const size = z.strictObject({ width: z.number().int().positive(), height: z.number().int().positive() });
export const came1 = z.discriminatedUnion('way', [
  z.strictObject({ way: z.literal('page'), fullSize: z.boolean() }),
  z.strictObject({ way: z.literal('background'), fullSize: z.boolean() }),
  z.strictObject({
    way: z.literal('capture'),
    fullSize: z.boolean(),
    part: z.boolean(),
    largest: size.nullable(),
    ledOn: z.literal(true).optional(),
  }),
]);

const line = z.strictObject({
  id: z.string(),
  photoId: z.string(),
  quad: quad1,
  stampScore: z.number().min(0).max(1),
  engine: z.enum(['net', 'tesseract']),
  lattice: lattice1,
  free: z.strictObject({ text: z.string(), probability: z.number().min(0).max(1) }),
  measurements: z.array(measurement1),
  mayGoOn: z.literal(true).optional(),
  otherWay: lattice1.optional(),
});

const byte = z.number().min(0).max(255);

export const unread1 = z.strictObject({ state: z.literal('unread'), photoId: z.string(), problem: problem1 });

/** A photo's reading before it was a list of observations. */
export const photoRead1 = z.discriminatedUnion('state', [
  z.strictObject({
    state: z.literal('read'),
    photoId: z.string(),
    width: z.number().int().positive(),
    height: z.number().int().positive(),
    lines: z.array(line),
    printed: z.array(z.string()),
    hash: z.string(),
    tooWeak: z.boolean(),
    background: z.strictObject({ lightness: byte, spread: byte, noise: byte }).optional(),
    came: came1.optional(),
  }),
  unread1,
]);
