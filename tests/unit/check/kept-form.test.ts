import { expect, it } from 'vitest';
import { checks } from '../../../src/check';
import { outcomeSchema, previousLookSchema } from '../../../src/check/types';
import { formOf } from '../../form-of';

/* `npm test -- unit/check/kept --update` writes them anew. */
it.each(Object.entries({ outcome: outcomeSchema, 'previous-look': previousLookSchema }))(
  'the form of %s is as it is kept',
  async (name, schema) => {
    await expect(formOf(schema)).toMatchFileSnapshot(`./kept/form-${name}.txt`);
  },
);

it('what each check says of itself, and the form of its data, are as they are kept', async () => {
  const out = checks.map(({ data, judge: _, ...more }) => `${JSON.stringify(more, null, 1)}\n${formOf(data, 0)}`);
  await expect(out.join('')).toMatchFileSnapshot('./kept/form-checks.txt');
});
