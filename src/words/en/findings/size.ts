import type { WordsFor } from '../../finding-words';

export const size: WordsFor<'measures-stated'> = {
  'measures-stated': {
    title: 'Measurements are stated',
    failureTitle: 'No measurements are stated',
    rule: 'Width, height and depth tell one model and one size from another.',
    statement: () => 'The listing states no width, height or depth.',
    innocent: 'The seller may expect that buyers know the model.',
    settles: 'Width, height and depth with the tape in the photo.',
  },
};
