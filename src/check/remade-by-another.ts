import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const remadeByAnother = defineCheck({
  id: 'remade-by-another',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: saidData,
  needs: { claims: ['remade'] },
  run: ({ claims }) => tellSaid('doubt', saidOf(claims.remade), askFor('remade-by', {})),
});
