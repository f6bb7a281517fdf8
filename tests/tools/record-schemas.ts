import * as z from 'zod';
import { frozenMakerFiles } from '../../src/maker/format';
import { frozenOrigins } from '../../src/store/record';
import { frozenRecords } from '../../src/watch/record';

/**
 * Every frozen form as JSON Schema (draft 2020-12), by its name: what is committed tells a form that was edited.
 */
export const recordJsonSchemas = (): Record<string, string> =>
  Object.fromEntries(
    Object.entries({ ...frozenRecords, ...frozenOrigins, ...frozenMakerFiles }).map(([name, schema]) => [
      name,
      `${JSON.stringify(z.toJSONSchema(schema, { io: 'input', reused: 'ref' }), null, 2)}\n`,
    ]),
  );
