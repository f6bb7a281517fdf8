import * as z from 'zod';

/** A form as JSON Schema, one value a line: every word, kind and limit that it lets pass. */
export const formOf = (schema: z.ZodType, indent = 1): string =>
  `${JSON.stringify(z.toJSONSchema(schema, { io: 'input', reused: 'ref', unrepresentable: 'any' }), null, indent)}\n`;
