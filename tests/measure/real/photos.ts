import { readFileSync } from 'node:fs';
import * as z from 'zod';

const point = z.tuple([z.number(), z.number()]).transform(([x, y]) => ({ x, y }));
const line = z.tuple([point, point]);

/** A photograph of a public repository, with what was counted on it by hand, twice, before anything was measured. */
const realPhoto = z.strictObject({
  file: z.string(),
  source: z.string(),
  commit: z.string().regex(/^[0-9a-f]{40}$/),
  path: z.string(),
  licence: z.string(),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  /** Drawn before the first run, and opened once. */
  aside: z.boolean(),
  /** First and last hole of a straight row, and the stitches between them. */
  rows: z.array(z.strictObject({ points: line, stitches: z.number().int() })),
  /** Corners of a panel, and the length of its repeat across in the photo's pixels. */
  repeats: z.array(z.strictObject({ points: z.array(point).length(4), px: z.number() })),
  /** Lines over what has no stitches. */
  none: z.array(line),
  /** Panels of what has no repeat that can be seen. */
  plain: z.array(z.array(point).length(4)),
});
export type RealPhoto = z.infer<typeof realPhoto>;

export const realPhotos = (): RealPhoto[] =>
  z.array(realPhoto).parse(JSON.parse(readFileSync(new URL('photos.json', import.meta.url), 'utf8')));
