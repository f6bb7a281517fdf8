import * as z from 'zod';
import { listing2 } from './listing-2';
import { look3 } from './look-3';
import { photoRead3 } from './photo-read-3';
import { problem2 } from './problem-2';

/** As the form before; why something was not read is a code and data. */
export const look4 = look3.extend({
  version: z.literal(4),
  listing: listing2.extend({ problems: z.array(problem2) }),
  photos: z.array(photoRead3),
});
