import * as z from 'zod';
import { origin1 } from './origin-1';

const said = z.record(z.string(), z.json());

/** As the form before; why asking brought nothing is a failure's code and data, of a file with its fault and line. */
export const origin2 = origin1.extend({
  version: z.literal(2),
  troubles: z.array(
    z.strictObject({
      code: z.string(),
      where: z.string(),
      data: said.optional(),
      after: z.strictObject({ code: z.string(), data: said.optional(), what: z.string().optional() }).optional(),
      fault: said.optional(),
      line: z.number().int().optional(),
      /** In English, as the form before had it. */
      what: z.string().optional(),
      expected: z.string().optional(),
      remedy: z.string().optional(),
    }),
  ),
});
