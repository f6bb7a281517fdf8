import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, tellSaid } from './said-claims';

export const pressureWords = defineCheck({
  id: 'pressure-words',
  family: 'seller',
  kinds: ['doubt'],
  source: practice,
  data: saidData,
  needs: { claims: ['hurry'] },
  run: ({ claims }) => tellSaid('doubt', claims.hurry, askFor('payment', {})),
});
