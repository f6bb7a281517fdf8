import { expect, it } from 'vitest';
import { claimSchema } from '../../../src/claim';
import { formOf } from '../../form-of';

/* `npm test -- unit/claim/kept --update` writes it anew. */
it('the form of a claim is as it is kept', async () => {
  await expect(formOf(claimSchema)).toMatchFileSnapshot('./kept/form.txt');
});
