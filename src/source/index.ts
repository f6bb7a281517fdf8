import * as z from 'zod';

/**
 * Where a rule or a figure comes from. `published` names the document; `memory` was not held against its
 * document and is shown as "not verified"; `practice` is common practice with no source; `maker-file`,
 * `listing`, `photo` and `user` name who says it.
 */
export const sourceSchema = z.strictObject({
  kind: z.enum(['published', 'memory', 'practice', 'maker-file', 'listing', 'photo', 'user']),
  text: z.string(),
});
export type Source = z.infer<typeof sourceSchema>;

export const commonPractice: Source = { kind: 'practice', text: 'common practice, no source' };

/** A hard statement is a rule without exception; a soft one is a habit. Only hard ones may contradict. */
export const strengthSchema = z.enum(['hard', 'soft']);
export type Strength = z.infer<typeof strengthSchema>;
