import * as z from 'zod';
import { look2 } from './look-2';

/** As the form before; photos of the piece may have come another way than by the page. */
export const look3 = z.strictObject({
  ...look2.shape,
  version: z.literal(3),
  /** They stand among `photos`, and not in the listing; `on` is the day on which they came, as the buyer says. */
  sent: z
    .array(
      z.strictObject({
        id: z.string().regex(/^sent-[0-9a-f]{16,64}$/),
        from: z.enum(['seller-chat', 'seller-mail', 'own']),
        on: z.iso.date(),
      }),
    )
    .max(40),
});
