import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const readyMadeAssurance = defineCheck({
  id: 'ready-made-assurance',
  family: 'text',
  kinds: ['gap'],
  source: practice,
  data: saidData,
  needs: { claims: ['assurance'] },
  run: ({ claims }) => tellSaid('gap', saidOf(claims.assurance), askFor('assurance', {})),
});
