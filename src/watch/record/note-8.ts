import * as z from 'zod';
import { digest1 } from './forms-1';
import { note7 } from './note-7';

const seen7 = note7.shape.looks.element;

/** As the form before; a look names the files of the photos that came with it another way than by the page. */
export const note8 = z.strictObject({
  ...note7.shape,
  version: z.literal(8),
  /** Latest first. */
  looks: z
    .array(
      z.strictObject({
        ...seen7.shape,
        files: z.array(z.strictObject({ photoId: z.string().max(80), file: digest1 })).max(40),
      }),
    )
    .min(1)
    .max(21),
});
