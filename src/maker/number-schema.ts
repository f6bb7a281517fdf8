import * as z from 'zod';
import { entryFields, ofPieces } from './entry-schema';

const part = z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, 'small-letters');
const amount = z.number().nonnegative();
const upTo = (least: number, most: number) =>
  z.tuple([z.number().min(least).max(most), z.number().min(least).max(most)]);
const counted = { part, least: amount, most: amount, ...ofPieces, ...entryFields };

/** A number by which pieces can be told: how many stitches a tab has, how far apart, how far a pattern repeats, a colour. */
export const numberSchema = z.discriminatedUnion('of', [
  /** Stitches of a part, counted along one side. */
  z.strictObject({ of: z.literal('stitches'), ...counted }),
  /** From one stitch to the next, in millimetres. */
  z.strictObject({ of: z.literal('stitch-pitch'), ...counted }),
  /** From one repeat of a pattern to the next, in millimetres. */
  z.strictObject({ of: z.literal('pattern-repeat'), ...counted }),
  /** A colour as the least and greatest L*, a* and b* (CIELAB, D65). */
  z.strictObject({
    of: z.literal('colour'),
    part,
    lightness: upTo(0, 100),
    greenRed: upTo(-128, 128),
    blueYellow: upTo(-128, 128),
    ...ofPieces,
    ...entryFields,
  }),
]);
export type FileNumber = z.infer<typeof numberSchema>;

export const numberKinds = [
  'stitches',
  'stitch-pitch',
  'pattern-repeat',
  'colour',
] as const satisfies readonly FileNumber['of'][];
