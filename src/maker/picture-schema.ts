import * as z from 'zod';
import { entryFields, name, ofPieces, text } from './entry-schema';

/** So large a picture shows a line of characters well, and forty of them fit into a file. */
export const largestPicture = 40_000;

/** Pixels only: SVG is a document, and could ask for others. */
const pixels = z
  .string()
  .max(largestPicture)
  .regex(/^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/, 'picture');

/** A picture to compare with: what it shows, who it is from, and under which terms. */
const picture = z.strictObject({ shows: name, pixels, source: text.min(1), licence: name });

/** How the characters of a period look, by reference pictures. */
export const typefaceSchema = z.strictObject({
  looks: text.min(1),
  ...ofPieces,
  pictures: z.array(picture).max(8).default([]),
  ...entryFields,
});
