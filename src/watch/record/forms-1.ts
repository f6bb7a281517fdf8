import * as z from 'zod';

/*
 * Small forms that frozen records are made of. Nothing in this folder follows a change elsewhere: a record that was
 * written once is read by the form of its day.
 */

/** A moment as `Date.toISOString` writes it: only moments of one form can be compared as words. */
export const moment1 = z.iso.datetime({ precision: 3, error: 'no date and time' });
/** A moment as a page or its reader gives it. */
export const anyMoment1 = z.iso.datetime({ error: 'no date and time' });

/** SHA-256 in hex: the name of what never changes. */
export const digest1 = z.string().regex(/^[0-9a-f]{64}$/, 'no SHA-256');

export const webAddress1 = z.string().regex(/^https?:\/\/[^\s/]/i, 'no web address (http or https)');
export const photoAddress1 = z.string().regex(/^(blob:)?https?:\/\/[^\s/]/i, 'no address of a photo (http or https)');

export const problem1 = z.strictObject({
  code: z.string().regex(/^[a-z0-9-]+$/),
  where: z.string(),
  what: z.string(),
  expected: z.string().optional(),
  remedy: z.string(),
});

const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a day as YYYY-MM-DD');
export const span1 = z.strictObject({
  from: day.nullable(),
  to: day.nullable(),
  precision: z.enum(['day', 'week', 'month', 'quarter', 'season', 'year', 'decade', 'range']),
  about: z.boolean().optional(),
});

export const status1 = z.enum(['watching', 'asked', 'answered', 'bought', 'passed']);

export const otherNote1 = z.strictObject({
  from: z.enum(['import', 'window', 'bin']),
  at: moment1,
  note: z.string().max(20_000),
  status: status1.nullable(),
});

export const typedCode1 = z.strictObject({ photoId: z.string().nullable(), code: z.string() });

/** A picture as data of a kind that holds pixels only: SVG is a document, and no picture that a buyer kept is one. */
export const pixels1 = z
  .string()
  .max(400_000)
  .regex(/^data:image\/(jpeg|png|webp);base64,[A-Za-z0-9+/]+={0,2}$/, 'no JPEG, PNG or WebP picture');

/** A finding as it is kept: which rule spoke, and what of. Its sentences are made when it is shown. */
export const found1 = z.strictObject({
  check: z.string(),
  kind: z.enum(['contradiction', 'doubt', 'gap', 'agreement']),
  data: z.record(z.string(), z.json()),
});
