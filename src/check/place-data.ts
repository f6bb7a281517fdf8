import * as z from 'zod';
import type { MarkRead } from '../mark/types';
import { photoNumber } from './types';

/** A mark that a photo shows, as a sentence names it, with the places that it names. */
export const placedMarkSchema = z.strictObject({
  photo: photoNumber,
  words: z.string(),
  verified: z.boolean(),
  places: z.array(z.string()),
});
export type PlacedMark = z.infer<typeof placedMarkSchema>;

export const placedMark = (
  { photoId, words, verified, places }: MarkRead,
  number: (photoId: string) => number | null,
): PlacedMark => ({ photo: photoId === null ? null : number(photoId), words, verified, places });
