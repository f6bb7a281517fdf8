import * as z from 'zod';
import { makerFileSchema } from './schema';

/**
 * The maker file's schema as JSON Schema (draft 2020-12), for editors and other programs. It says what a file may
 * hold; that examples decode as they say, and that periods run forwards, only the tool itself tests.
 */
export function makerFileJsonSchema(): string {
  const { $schema, ...rest } = z.toJSONSchema(makerFileSchema, { io: 'input', reused: 'ref' });
  const schema = {
    $schema,
    title: 'Maker file of Tellstamp, format 2',
    description:
      'All that is known of one maker. The language is documented in docs/maker-files.md; examples are tested when the file is read.',
    ...rest,
  };
  return `${JSON.stringify(schema, null, 2)}\n`;
}
