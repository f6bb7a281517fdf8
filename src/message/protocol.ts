import * as z from 'zod';
import { pageExtractSchema } from '../listing/extract-types';
import { pickFieldSchema, pickSchema } from '../listing/pick-types';
import { listingSchema } from '../listing/types';
import { adjustmentSchema } from '../photo/adjustment-types';
import { cameSchema, sizePxSchema } from '../photo/read-types';
import { disturbances } from '../problem';
import { photoReadSchema } from '../stamp/types';
import type { MessageName } from './routes';

const tabId = z.number().int();
const empty = z.strictObject({});

/** Bytes of a photo and the way they came. `base64`, because Chrome's messages carry JSON only. */
export const photoBytesSchema = z.strictObject({
  base64: z.string(),
  mediaType: z.string(),
  came: cameSchema,
});
export type PhotoBytes = z.infer<typeof photoBytesSchema>;

/**
 * Where a photo's bytes lie inside the extension: an address that the panel made for them, which all its documents may ask.
 * No base64 goes between them.
 */
const file = z.string().startsWith('blob:');

/** A small picture as a data address, for the screen and the watch list. */
const picture = z.string().startsWith('data:image/');

/** What the reader says of one photo: the facts for the case, and pictures for the screen. */
export const photoViewSchema = z.strictObject({
  read: photoReadSchema,
  thumbnail: picture.nullable(),
  crops: z.array(z.strictObject({ lineId: z.string(), picture })),
});
export type PhotoView = z.infer<typeof photoViewSchema>;

/** Every message: what goes in and what comes out. Who sends and who handles it stands in `routes.ts`. */
export const protocol = {
  'page.read': {
    input: z.strictObject({ tabId }),
    output: z.strictObject({ listing: listingSchema, incognito: z.boolean(), picks: z.array(pickSchema) }),
  },
  'page.mayRead': {
    input: z.strictObject({ tabId }),
    output: z.strictObject({ mayRead: z.boolean() }),
  },
  'photo.fetch': {
    input: z.strictObject({ tabId, photoId: z.string() }),
    output: photoBytesSchema,
  },
  'reader.open': { input: empty, output: empty },
  /** How likely a photo shows a stamp, by a quick look, or a second and closer one: the order in which photos are read. */
  'photo.glance': {
    input: z.strictObject({ photoId: z.string(), file, closer: z.boolean() }),
    output: z.strictObject({ likelihood: z.number().min(0).max(1) }),
  },
  'photo.read': {
    input: z.strictObject({ photoId: z.string(), file, adjustment: adjustmentSchema }),
    output: photoViewSchema,
  },
  'reader.renew': { input: empty, output: empty },
  'tab.granted': {
    /** When the user clicked, milliseconds since 1970: a panel that the click itself opened has read already. */
    input: z.strictObject({ tabId, at: z.number() }),
    output: empty,
  },
  /** The page script hands over what the structure of the page tells; the background reads the words. */
  'listing.read': {
    input: z.strictObject({
      picks: z.array(pickSchema),
      /** Words of frames that the page script itself cannot look into, by the frame's address. */
      frameTexts: z.record(z.string(), z.string()),
    }),
    output: pageExtractSchema,
  },
  /** Whether the page still shows what was read of it; yes while nothing was read yet. */
  'page.stands': { input: empty, output: z.strictObject({ stands: z.boolean() }) },
  /** The user points at a field on the page; null when the user ends it. Asked by the panel itself: it may take long. */
  'field.pick': {
    input: z.strictObject({ field: pickFieldSchema, invite: z.string() }),
    output: pickSchema.nullable(),
  },
  'field.endPick': { input: empty, output: empty },
  'photo.fetchInPage': {
    /** `withinMs`: how long the photo may take. */
    input: z.strictObject({ url: z.string(), withinMs: z.number().int().positive() }),
    output: z.strictObject({ base64: z.string(), mediaType: z.string() }),
  },
  'photo.show': {
    input: z.strictObject({ urls: z.array(z.string()) }),
    /** Where the photo is seen with nothing over it, in CSS pixels of what the window shows; `viewport` with scrollbars. */
    output: z.strictObject({
      x: z.number(),
      y: z.number(),
      width: z.number().positive(),
      height: z.number().positive(),
      viewport: z.strictObject({ width: z.number().positive(), height: z.number().positive() }),
      part: z.boolean(),
      /** Whether the version that the page shows is the largest of the listing's addresses for it. */
      isLargest: z.boolean(),
      largest: sizePxSchema.nullable(),
    }),
  },
  /** Asked after the picture: why the photo stands no more where it was shown; null when it does. */
  'photo.stands': {
    input: empty,
    output: z.strictObject({ why: z.enum(disturbances).nullable() }),
  },
  'photo.unshow': { input: empty, output: empty },
} as const satisfies Record<MessageName, { input: z.ZodType; output: z.ZodType }>;

type Protocol = typeof protocol;
export type InputOf<N extends MessageName> = z.infer<Protocol[N]['input']>;
export type OutputOf<N extends MessageName> = z.infer<Protocol[N]['output']>;
