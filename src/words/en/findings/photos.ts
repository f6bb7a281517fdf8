import type { WordsFor } from '../../finding-words';

export const photos: WordsFor<'photo-large-enough'> = {
  'photo-large-enough': {
    title: 'Photos are large enough to see details',
    failureTitle: 'All photos are too small to see details',
    statement: ({ longestPx }, kit) => `The largest photo is ${kit.number(longestPx)} pixels long.`,
    rule: 'Details such as stitches and stamps need photos of some size.',
    innocent: 'Some marketplaces shrink what sellers upload.',
    settles: 'Larger photos, also by message.',
  },
};
