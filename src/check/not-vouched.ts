import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const notVouched = defineCheck({
  id: 'not-vouched',
  family: 'text',
  kinds: ['gap'],
  source: practice,
  data: saidData,
  needs: { claims: ['not-vouched'] },
  run: ({ claims }) => tellSaid('gap', saidOf(claims['not-vouched']), askFor('purchase', {})),
});
