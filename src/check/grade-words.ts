import { askFor } from './asks';
import { defineCheck, practice } from './frame';
import { saidData, saidOf, tellSaid } from './said-claims';

export const gradeWords = defineCheck({
  id: 'grade-words',
  family: 'text',
  kinds: ['doubt'],
  source: practice,
  data: saidData,
  needs: { claims: ['grade-of-copy'] },
  run: ({ claims }) => tellSaid('doubt', saidOf(claims['grade-of-copy']), askFor('authorship', {})),
});
