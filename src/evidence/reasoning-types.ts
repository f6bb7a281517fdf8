import * as z from 'zod';
import { strengthSchema } from '../source';
import { spanSchema } from '../span/types';
import { informsSchema, overSchema } from './rule/types';
import { toldSchema } from './told';

/**
 * What a set of evidence allows together. `spans` and `places` are alternatives; an empty list means that nothing in
 * the set speaks of date, or of place.
 */
const stretch = { spans: z.array(spanSchema), places: z.array(z.string()) };
export const stretchSchema = z.strictObject(stretch);
export type Stretch = z.infer<typeof stretchSchema>;

/**
 * Evidence ids that hold together, how many different facts they come from, which of these counts because it could have
 * excluded another, and where they agree.
 */
const agreeingSetForm = z.strictObject({
  evidence: z.array(z.string()),
  facts: z.number().int().nonnegative(),
  told: toldSchema,
  ...stretch,
});
export type AgreeingSet = z.infer<typeof agreeingSetForm>;

/** Two facts that agree and could have excluded each other. */
const agreementForm = z.strictObject({
  evidence: z.tuple([z.string(), z.string()]),
  over: overSchema,
  /** The rule that compares the two. */
  rule: z.string(),
  /** Why it counts. */
  informs: informsSchema,
  /** Whether it counts where several facts agree on a date or a place: what is open at an end excludes too little. */
  narrows: z.boolean(),
});
export type Agreement = z.infer<typeof agreementForm>;

/** Evidence ids that cannot all hold although any of them may be left out and the rest holds. */
const conflictForm = z.strictObject({
  evidence: z.array(z.string()).min(1),
  over: overSchema,
  /** Hard when it cannot be if all of it is true: only then is it a contradiction; else it is unlikely. */
  strength: strengthSchema,
  /** The rule that compares the two facts; null where there are more of them, or no rule does. */
  rule: z.string().nullable(),
});
export type Conflict = z.infer<typeof conflictForm>;

/** One fact that, if it is wrong, leaves everything else in agreement. */
const explanationForm = z.strictObject({
  /** Basis of the fact, and all its evidence. */
  basis: z.string(),
  evidence: z.array(z.string()),
  /** 'all': the rest of all evidence agrees; 'hard': the rest of the hard evidence does. */
  rest: z.enum(['all', 'hard']),
  ...stretch,
});
export type Explanation = z.infer<typeof explanationForm>;

export const reasoningSchema = z.strictObject({
  /** Whether all evidence of date and place, soft and hard, can hold together. */
  agrees: z.boolean(),
  /** The largest agreeing sets, several when they are equally large. */
  agreeing: z.array(agreeingSetForm),
  /** Every two facts that agree by a rule, and why that counts. */
  agreements: z.array(agreementForm),
  /** Hard ones first, smaller ones first; those of date and place before those of ages, sizes and sums. */
  conflicts: z.array(conflictForm),
  /** False when there were too many conflicts of more than three pieces to list them all. */
  conflictsComplete: z.boolean(),
  explanations: z.array(explanationForm),
});
export type Reasoning = z.infer<typeof reasoningSchema>;
