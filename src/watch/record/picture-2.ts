import * as z from 'zod';
import { digest1 } from './forms-1';

/** A photo as a file carries it whole, of a kind that holds pixels only, named by the SHA-256 of its bytes. */
export const picture2 = z.strictObject({
  hash: digest1,
  picture: z
    .string()
    .max(8_100_000)
    .regex(
      /^data:image\/(jpeg|png|webp|avif|gif|bmp|jxl);base64,[A-Za-z0-9+/]+={0,2}$/,
      'no photo of a kind that browsers show',
    ),
});
