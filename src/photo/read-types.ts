import * as z from 'zod';
import { problemSchema } from '../problem/schema';
import { type Observation, observationSchema } from './observation-types';

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

/** What was read of one photo: all that was seen in it, by whichever reader or observer. */
const photoReadSchema = z.discriminatedUnion('state', [
  z.strictObject({
    state: z.literal('read'),
    photoId: z.string(),
    /** The pixels that every `where` counts in. */
    width: z.number().int().positive(),
    height: z.number().int().positive(),
    observations: z.array(observationSchema),
    /** Absent for a file that was at hand, and in cases kept before it was told. */
    came: cameSchema.optional(),
  }),
  z.strictObject({ state: z.literal('unread'), photoId: z.string(), problem: problemSchema }),
]);
export type PhotoRead = z.infer<typeof photoReadSchema>;

/** The schema of a photo's reading, with the forms that readers above this folder give to their details. */
export const photoReadWith = (details: Readonly<Record<string, z.ZodType>>) =>
  photoReadSchema.superRefine((read, context) => {
    if (read.state === 'unread') return;
    for (const [index, { what, detail }] of read.observations.entries()) {
      const form = Object.hasOwn(details, what) ? details[what] : undefined;
      const issue = form?.safeParse(detail).error?.issues[0];
      if (!issue) continue;
      const path = ['observations', index, 'detail', ...issue.path];
      context.addIssue({ code: 'custom', message: issue.message, path });
    }
  });

/** Everything of one kind that was seen in a photo, in order. */
export const seenIn = (read: PhotoRead, what: string): Observation[] =>
  read.state === 'read' ? read.observations.filter((one) => one.what === what) : [];

/** The first value of a kind; null where it was not measured. */
export const valueIn = (read: PhotoRead, what: string): Observation['value'] => seenIn(read, what)[0]?.value ?? null;

/** Lines of ordinary print: labels, tags, words laid over a photo. */
export const printedIn = (read: PhotoRead): string[] => seenIn(read, 'print').map(({ value }) => String(value));

/** Whether a photo is too small or too blurred to say that it shows no stamp. */
export const isTooWeakRead = (read: PhotoRead): boolean => valueIn(read, 'too-weak') === true;

/** That a photo shows a part of the piece, as the buyer says; its value is the part's name, or `stamp`. */
export const showsPart = 'shows-part';

/** A place of its own beside the parts: what dates a piece. */
export const stampAsPart = 'stamp';

/** The parts that a photo shows, as the buyer says. */
export const partsSeenIn = (read: PhotoRead): string[] => seenIn(read, showsPart).map(({ value }) => String(value));
