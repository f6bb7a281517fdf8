import * as z from 'zod';
import { caseSchema } from '../case/types';
import type { problemSchema } from '../problem';

/** What the buyer did about a case. */
export const statusSchema = z.enum(['watching', 'asked', 'answered', 'bought', 'passed']);
export type WatchStatus = z.infer<typeof statusSchema>;

/** A moment as `Date.toISOString` writes it: only moments of one form can be compared as words. */
const momentSchema = z.iso.datetime({ precision: 3, error: 'no date and time' });

/** A picture as data of a kind that holds pixels only: SVG is a document, and no picture that a buyer kept is one. */
const pixelsSchema = z
  .string()
  .max(400_000)
  .regex(/^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/, 'no JPEG, PNG or WebP picture');

/** A small picture kept with the case, as a data address. `lineId` is null for a whole photo. */
export const keptPictureSchema = z.strictObject({
  photoId: z.string(),
  lineId: z.string().nullable(),
  picture: pixelsSchema,
});
export type KeptPicture = z.infer<typeof keptPictureSchema>;

/** What was there at one time: the case of one reading of the page, and the pictures kept of it. */
const lookSchema = z.strictObject({ case: caseSchema, pictures: z.array(keptPictureSchema).max(60) });
export type Look = z.infer<typeof lookSchema>;

export const mostNoteCharacters = 20_000;
export const mostEarlierLooks = 20;

/** What the buyer or someone else wrote about the same listing elsewhere: kept beside the note until it is settled. */
const otherNoteSchema = z.strictObject({
  /** From an imported file, from another window of this browser, or from a deleted case of the same listing. */
  from: z.enum(['import', 'window', 'bin']),
  at: momentSchema,
  note: z.string().max(mostNoteCharacters),
  /** Null when it says the same as the case itself. */
  status: statusSchema.nullable(),
});
export type OtherNote = z.infer<typeof otherNoteSchema>;

/** The record version that this program writes. The structure of the database has a number of its own. */
export const recordVersion = 2;

/**
 * One listing of the list: the latest look (`case`, `pictures`), the looks before it, and what the buyer wrote.
 */
export const watchRecordSchema = z.strictObject({
  version: z.literal(recordVersion),
  /** Made once, never reused. */
  id: z.string().min(1).max(80),
  title: z.string().max(500),
  savedAt: momentSchema,
  changedAt: momentSchema,
  status: statusSchema,
  note: z.string().max(mostNoteCharacters),
  otherNotes: z.array(otherNoteSchema).max(20),
  ...lookSchema.shape,
  /** Latest first. */
  earlier: z.array(lookSchema).max(mostEarlierLooks),
  /** Deleted records wait here for 30 days, so that a deletion can be undone. */
  removedAt: momentSchema.nullable(),
});
export type WatchRecord = z.infer<typeof watchRecordSchema>;

/** What an imported file brought. */
export interface Imported {
  added: number;
  /** Titles of cases that were here and have got a look, a note or a status more. */
  joined: string[];
  /** Titles of those that now keep another note beside the buyer's own. */
  bothNotes: string[];
  /** Already here as they are. */
  same: number;
  /** Deleted here after the file was written, and still in the bin. */
  stayDeleted: number;
  /** Written by a newer version: kept as they are. */
  newer: number;
  refused: z.infer<typeof problemSchema>[];
}
