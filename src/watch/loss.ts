import * as z from 'zod';

/** What the database says of itself. `identity` is made with the database, `generation` grows with every change. */
export interface Inside {
  identity: string;
  generation: number;
  records: number;
}

/** `gone`: the database is another one than before. `older`: it is a former copy of itself, or lacks records. */
const lossSchema = z.strictObject({
  kind: z.enum(['gone', 'older']),
  /** Records of the list when it was last changed, null when that was not written down yet. */
  before: z.number().int().nonnegative().nullable(),
  noticedAt: z.string(),
});
export type Loss = z.infer<typeof lossSchema>;

/** What stands outside the database: how it was when it was last changed, and a loss that the user does not know of. */
const markSchema = z.strictObject({
  identity: z.string().nullable(),
  generation: z.number().int().nonnegative(),
  records: z.number().int().nonnegative().nullable(),
  loss: lossSchema.nullable(),
});
export type Mark = z.infer<typeof markSchema>;

/** The mark as it was stored. Former builds stored the generation alone; what is no mark counts as none. */
export function readMark(stored: unknown): Mark | null {
  if (typeof stored === 'number' && Number.isInteger(stored) && stored > 0) {
    return { identity: null, generation: stored, records: null, loss: null };
  }
  const parsed = markSchema.safeParse(stored);
  return parsed.success ? parsed.data : null;
}

const markOf = (inside: Inside): Mark => ({ ...inside, loss: null });

/**
 * The mark after the database was opened, a loss noted in it when there is one. `inside` has to be read after `standing`:
 * it is then never behind it unless something was lost. A noted loss stays until the user takes note of it, however
 * often the list is changed in between. A profile that is put back as a whole takes the mark along: that goes unnoticed.
 */
export function markAtOpening(inside: Inside, standing: Mark | null, now: string): Mark {
  if (standing === null) return markOf(inside);
  if (standing.loss !== null) return standing;
  const kind = lossOf(inside, standing);
  if (kind === null) return markOf(inside);
  return { ...standing, loss: { kind, before: standing.records, noticedAt: now } };
}

function lossOf(inside: Inside, { identity, generation, records }: Mark): Loss['kind'] | null {
  if (identity !== null && identity !== inside.identity) return 'gone';
  if (inside.generation < generation) return inside.generation === 0 ? 'gone' : 'older';
  // The same generation has the same records; a later one may have fewer, for the user deletes some.
  if (inside.generation === generation && records !== null && inside.records < records) return 'older';
  return null;
}

/** The mark after a change: raised, never lowered. Another window may have raised it further meanwhile. */
export function markAfterChange(inside: Inside, standing: Mark | null): Mark {
  if (standing === null) return markOf(inside);
  const mayRaise = standing.loss === null && standing.identity === inside.identity;
  return mayRaise && standing.generation < inside.generation ? markOf(inside) : standing;
}

/** The mark after the user took note of a loss: the one way in which it falls. */
export const markAfterLoss = markOf;
