import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { because } from './reasons';
import { saidData, tellSaid } from './said-claims';

/** New pieces of one kind are alike; of used ones the photos show one, and the buyer gets another. */
export const oneOfMany = defineCheck({
  id: 'one-of-many',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: saidData,
  needs: { claims: ['in-stock', 'condition'] },
  unless: ({ claims }) =>
    claims['in-stock'].length > 0 && claims.condition.some(({ condition }) => condition === 'new')
      ? because('sold-new', {})
      : null,
  run: ({ claims }) => tellSaid('gap', claims['in-stock'], askFor('which-one', {})),
});
