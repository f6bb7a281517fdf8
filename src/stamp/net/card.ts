import * as z from 'zod';

/**
 * What a pair of nets says of itself: the steps that its training used, so that reading takes the same ones, and the
 * levels below which nothing counts as read. Figures and commands stand beside them and are not needed to run.
 */
export const modelCardSchema = z.looseObject({
  date: z.string(),
  /** Class 0 is the CTC blank; class i + 1 is character i. `sign` among them stands for what is no character of ours. */
  alphabet: z.string().min(1).max(200),
  temperature: z.number().positive(),
  acceptance: z.object({ stampScore: z.number().min(0).max(1) }),
  finder: z.looseObject({
    file: z.string(),
    input: z.string(),
    output: z.string(),
    /** Longest side of the photo as the finder sees it, and what its sides are padded to a multiple of. */
    longest: z.number().int().positive(),
    multiple: z.number().int().positive(),
    /** Pixels between two cells of the map, and the unit of its distances. */
    step: z.number().positive(),
    unit: z.number().positive(),
    /** Score above which a cell belongs to a line, and the fewest cells of one. */
    core: z.number().min(0).max(1),
    smallest: z.number().int().positive(),
    /** Lines whose cells are less sure than this on the mean are left out; most real lines score above 0.85. */
    least: z.number().min(0).max(1).default(0),
  }),
  recogniser: z.looseObject({
    file: z.string(),
    input: z.string(),
    output: z.string(),
    height: z.number().int().positive(),
    /**
     * Ground taken in beside and above the line, in shares of its height. Beside it is a character's width, so that a
     * box that stops short of a character cannot make the shorter text a sure one.
     */
    beside: z.number().min(0),
    above: z.number().min(0),
    narrowest: z.number().int().positive(),
    widest: z.number().int().positive(),
    multiple: z.number().int().positive(),
    /** Share of a character that goes to the one with the same shape in many faces (O and 0, I and 1). */
    alike: z.number().min(0).max(0.5).default(0),
  }),
});
export type ModelCard = z.infer<typeof modelCardSchema>;
