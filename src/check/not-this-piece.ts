import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const notThisPiece = defineCheck({
  id: 'not-this-piece',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: saidData,
  needs: { claims: ['not-this-piece'] },
  run: ({ claims }) => tellSaid('doubt', saidOf(claims['not-this-piece']), askFor('own-photo', {})),
});
