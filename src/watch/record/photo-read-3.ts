import * as z from 'zod';
import { holdLines2, read2 } from './photo-read-2';
import { problem2 } from './problem-2';

const unread = z.strictObject({ state: z.literal('unread'), photoId: z.string(), problem: problem2 });

/** As the form before; why a photo was not read is a code and data. */
export const photoRead3 = z.discriminatedUnion('state', [read2, unread]).superRefine(holdLines2);
