import * as z from 'zod';
import { namesNobody, possibleMakerName } from '../claim';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { qualitiesOf } from './qualities';
import { because } from './reasons';

/** More names than these are a list, and say no more. */
const mostMakers = 4;

export const makerStated = defineCheck({
  id: 'maker-stated',
  family: 'text',
  kinds: ['gap', 'doubt'],
  source: practice,
  data: z.strictObject({
    /** Empty where none is named. */
    makers: z.array(z.string()),
  }),
  needs: {
    claims: ['maker'],
    listing: ['maker', 'title', 'description', 'text', 'language'],
    evidence: true,
    pairs: true,
  },
  run({ claims, listing, evidence, pairOf }) {
    const asks = [askFor('authorship', {})];
    if (claims.maker.length === 0) {
      if (listing.maker.some(({ value }) => !namesNobody(value))) return [];
      const possible = possibleMakerName(listing);
      if (possible !== null) return { cannotTell: because('name-without-file', { name: possible }) };
      return [{ kind: 'gap', data: { makers: [] }, asks }];
    }
    const different = qualitiesOf(evidence, 'maker-name').filter(({ id }, at, all) =>
      all.slice(0, at).every((before) => pairOf('makers', before.id, id)?.relation === 'conflicts'),
    );
    if (different.length < 2) return [];
    const named = different.slice(0, mostMakers);
    return [
      {
        kind: 'doubt',
        data: { makers: named.map(({ says }) => says.maker) },
        claims: claims.maker.map(({ id }) => id),
        evidence: named.map(({ id }) => id),
        asks,
      },
    ];
  },
});
