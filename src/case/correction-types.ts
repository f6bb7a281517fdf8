import * as z from 'zod';
import { findingSchema } from '../check/types';
import { claimSchema } from '../claim/types';
import { photoAddressSchema } from '../listing/types';
import { adjustmentSchema } from '../photo/adjustment-types';
import { handMarkSchema, handMeasureSchema } from '../photo/measure/hand/hand-types';
import { observationSchema } from '../photo/observation-types';

/**
 * A photo as a correction means it: its number on the page may change. By its address, or where the page makes its
 * addresses anew by what it shows.
 */
const photoMeantSchema = z.strictObject({ url: photoAddressSchema, hash: z.string().nullable() });
export type PhotoMeant = z.infer<typeof photoMeantSchema>;

/** What a hand says is there. `where` is in shares of the photo's sides: the same photo may come in another size. */
const seenByHandSchema = observationSchema.pick({ what: true, value: true, unit: true, where: true });
export type SeenByHand = z.infer<typeof seenByHandSchema>;

/** A sentence or two. */
export const mostReasonCharacters = 1000;

/** More are never made by hand; a list from elsewhere ends there. */
export const mostCorrections = 500;

const id = z.string().min(1).max(40);

/**
 * One thing that the buyer set right, set aside or chose. Without `target` something is added, without `to` its target is struck, with
 * both it is set. What it was is kept, so that nothing else is changed when the photo is read otherwise one day.
 */
export const correctionSchema = z
  .discriminatedUnion('of', [
    z.strictObject({
      id,
      of: z.literal('seen'),
      /** Null: in no photo of the page; only what is added may be. */
      photo: photoMeantSchema.nullable(),
      /** `name`: the observation's id after its photo's. */
      target: z.strictObject({ name: z.string(), what: z.string(), was: observationSchema.shape.value }).nullable(),
      to: seenByHandSchema.nullable(),
    }),
    z.strictObject({
      id,
      of: z.literal('claim'),
      /** The claim as it was found: it can be put back, and told of when it is gone. */
      target: claimSchema.nullable(),
      to: claimSchema.nullable(),
    }),
    /** A finding that the buyer set aside, as it was found, with the reason in the buyer's words. */
    z.strictObject({
      id,
      of: z.literal('finding'),
      target: findingSchema.pick({ id: true, check: true, kind: true, data: true }),
      reason: z.string().min(1).max(mostReasonCharacters),
    }),
    /** Which of several pieces on offer the case is of; null where the buyer says that it is one. */
    z.strictObject({
      id,
      of: z.literal('piece'),
      among: z.array(z.string()).min(2).max(12),
      to: z.string().nullable(),
    }),
    /** The part of a photo that is read in place of the whole, turned or inverted. */
    z.strictObject({ id, of: z.literal('part'), photo: photoMeantSchema, to: adjustmentSchema }),
    /** What the buyer marked on a photo, with what was measured there: a kept case has the photo's pixels no more. */
    z.strictObject({
      id,
      of: z.literal('mark'),
      photo: photoMeantSchema,
      mark: handMarkSchema,
      measured: z.array(handMeasureSchema).max(12),
    }),
  ])
  .refine((one) => !('target' in one && 'to' in one) || one.target !== null || one.to !== null, 'corrects nothing')
  .refine((one) => one.of !== 'seen' || one.photo !== null || one.target === null, 'its photo is missing');
export type Correction = z.infer<typeof correctionSchema>;

type WithoutId<T> = T extends unknown ? Omit<T, 'id'> : never;
export type NewCorrection = WithoutId<Correction>;

/** A code as the buyer reads it, in a photo or anywhere on the piece. */
export const codeByHand = 'code';

/** Which of several pieces on offer a photo's stamp is on, as the buyer says. */
export const pieceOfStamp = 'piece-of-stamp';
