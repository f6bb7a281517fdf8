import * as z from 'zod';
import { differenceSchema } from '../code';
import type { Decoding, Reading } from '../code/types';
import { spanSchema } from '../span/types';
import { photoNumber } from './types';

/** A code as a sentence names it: where it was seen, and its text. */
export const shownCodeSchema = z.strictObject({
  from: z.enum(['photo', 'typed', 'claim']),
  photo: photoNumber,
  code: z.string(),
});
export type ShownCode = z.infer<typeof shownCodeSchema>;

/** What a reading says of date and place. */
export const readingSaidSchema = z.strictObject({ span: spanSchema.nullable(), places: z.array(z.string()) });
export type ReadingSaid = z.infer<typeof readingSaidSchema>;

/** The nearest code that reads, by what it differs; null where the text is the same and only its time is not. */
export const nearCodeSchema = z.strictObject({
  code: z.string(),
  differences: z.array(differenceSchema).nullable(),
  system: z.string(),
  used: spanSchema,
  says: readingSaidSchema,
});
export type NearCode = z.infer<typeof nearCodeSchema>;

export const shownFrom = (
  { from }: Pick<Decoding, 'from'>,
  code: string,
  number: (photoId: string) => number | null,
): ShownCode => ({ from: from.kind, photo: from.kind === 'photo' ? number(from.photoId) : null, code });

/** Readings that say the same are one. */
export function readingsSaid(readings: readonly Reading[]): ReadingSaid[] {
  const said = readings.map(({ span, places }): ReadingSaid => ({ span, places }));
  return said.filter((one, at) => said.findIndex((other) => JSON.stringify(other) === JSON.stringify(one)) === at);
}
