import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const packagingOnly = defineCheck({
  id: 'packaging-only',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: saidData,
  needs: { claims: ['packaging-only'] },
  run: ({ claims }) => tellSaid('doubt', saidOf(claims['packaging-only']), askFor('what-comes', {})),
});
