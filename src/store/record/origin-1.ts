import * as z from 'zod';

const at = z.string();
const version = z.strictObject({ at, sha256: z.string(), file: z.record(z.string(), z.unknown()) });

/** Where one of the buyer's maker files is from, as it was first written. Not edited again. */
export const origin1 = z.strictObject({
  version: z.literal(1),
  address: z.string(),
  /** Whether it is looked for changes once a day. */
  daily: z.boolean(),
  /** When the address was asked last, whatever came of it. */
  asked: at,
  /** The file as it was used last: what was left for later stands there as it was. */
  used: version,
  /** A later one of which not all was used yet. */
  found: version.nullable(),
  /** Why asking brought nothing. */
  troubles: z.array(
    z.strictObject({
      code: z.string(),
      where: z.string(),
      what: z.string(),
      expected: z.string().optional(),
      remedy: z.string(),
    }),
  ),
  /** What it takes to go back behind the last update: the buyer's own file before and after. */
  before: z
    .strictObject({
      used: version,
      found: version,
      own: z.record(z.string(), z.unknown()),
      after: z.record(z.string(), z.unknown()),
    })
    .nullable(),
});
