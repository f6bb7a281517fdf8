import * as z from 'zod';
import { namesNobody, possibleMakerName } from '../claim';
import { plainName } from '../maker';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';

export const makerStated = defineCheck({
  id: 'maker-stated',
  family: 'text',
  kinds: ['gap', 'doubt'],
  source: practice,
  data: z.strictObject({
    /** Empty where none is named. */
    makers: z.array(z.string()),
  }),
  needs: { claims: ['maker'], listing: ['maker', 'title', 'description', 'text', 'language'] },
  run({ claims, listing }) {
    const field = listing.maker.find(({ value }) => !namesNobody(value));
    const asks = [askFor('authorship', {})];
    const names = [...claims.maker.map(({ maker }) => maker), ...(field ? [field.value] : [])];
    if (names.length === 0) {
      const possible = possibleMakerName(listing);
      if (possible !== null) return { cannotTell: because('name-without-file', { name: possible }) };
      return [{ kind: 'gap', data: { makers: [] }, asks }];
    }
    const different = names.filter((name, index) => !names.slice(0, index).some((other) => sameMaker(name, other)));
    if (different.length < 2) return [];
    const data = { makers: different.slice(0, 4) };
    return [{ kind: 'doubt', data, claims: claims.maker.map(({ id }) => id), asks }];
  },
});

/** Whether one name is the other, or a longer form of it, word by word. */
const sameMaker = (a: string, b: string) => {
  const [one, other] = [` ${plainName(a)} `, ` ${plainName(b)} `];
  return one.includes(other) || other.includes(one);
};
