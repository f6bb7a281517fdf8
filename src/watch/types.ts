import type * as z from 'zod';
import type { Problem } from '../problem';
import { type otherNote1, pixels1, status1 } from './record/forms-1';
import type { look4 } from './record/look-4';
import { note9 } from './record/note-9';
import { picture2 } from './record/picture-2';

/** What the buyer did about a case. */
export const statusSchema = status1;
export type WatchStatus = z.infer<typeof statusSchema>;

/** A small picture kept of a look, as a data address. `lineId` is null for a whole photo. */
export interface KeptPicture {
  photoId: string;
  lineId: string | null;
  picture: string;
}
export const pixelsSchema = pixels1;

/** What a photo's file holds, as it came; its kind is told by its bytes. */
export interface FileContent {
  type: string;
  bytes: Uint8Array;
}
/** A photo's file that is kept with a look: its content, or the name under which it is kept already. */
export type KeptFile = { photoId: string } & (FileContent | { file: string });
export const photoAddressSchema = picture2.shape.picture;

export const mostNoteCharacters = 20_000;
export const mostEarlierLooks = 20;

/** What the buyer or someone else wrote about the same listing elsewhere: kept beside the note until it is settled. */
export type OtherNote = z.infer<typeof otherNote1>;

/** The record version that this program writes. The structure of the database has a number of its own. */
export const recordVersion = 9;
export const lookVersion = 4;

/** One listing of the list: what the buyer wrote and the names of its looks. Its form is frozen; a change is a new one. */
export const watchRecordSchema = note9;
export type WatchRecord = z.infer<typeof watchRecordSchema>;
/** A look as its record names it. */
export type LookName = WatchRecord['looks'][number];
/** What was there at one time. */
export type Look = z.infer<typeof look4>;
/** A finding as it was found, without its sentences. */
export type Found = Look['judged']['found'][number];

/** Looks and pictures as the database holds them, each under the SHA-256 of its content. */
export interface StoredLook {
  hash: string;
  /** Its JSON text, deflated. */
  packed: Uint8Array;
}
export interface StoredPicture {
  hash: string;
  type: string;
  bytes: Uint8Array;
}
export interface Parts {
  looks: StoredLook[];
  pictures: StoredPicture[];
}

/** When a piece was made, as something else than its code settles it. */
export type DatedOtherwise = NonNullable<WatchRecord['dated']>;

/** When a photo that came another way than by the page was brought or taken out last. */
export type SentChange = WatchRecord['sentChanges'][number];

/** A question of the record that was asked, and when. */
export type AskedQuestion = WatchRecord['asked'][number];

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
  /** Photos kept whole that the file says it had no room for. */
  leftOut: number;
  /** Which of how many files of one export it was; null for one that is all of it. */
  file: { number: number; of: number } | null;
  /** Pictures of cases that were here without them. */
  filled: number;
  refused: Problem[];
}
