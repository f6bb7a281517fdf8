import { expect, it } from 'vitest';
import { reasoningSchema, statedSchema } from '../../../src/evidence';
import { evidenceSchema } from '../../../src/evidence/types';
import { formOf } from '../../form-of';

/* `npm test -- unit/evidence/kept --update` writes them anew. */
it.each(Object.entries({ evidence: evidenceSchema, reasoning: reasoningSchema, stated: statedSchema }))(
  'the form of %s is as it is kept',
  async (name, schema) => {
    await expect(formOf(schema)).toMatchFileSnapshot(`./kept/form-${name}.txt`);
  },
);
