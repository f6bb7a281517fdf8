import * as z from 'zod';

export const besideMarkKinds = ['repair', 'size', 'shop', 'seconds', 'other'] as const;

/** A mark that stands beside a code and is none, as the maker's file explains it. */
export const besideSchema = z.strictObject({
  text: z.string(),
  kind: z.enum(besideMarkKinds),
  means: z.string(),
  maker: z.string(),
});
export type Beside = z.infer<typeof besideSchema>;
