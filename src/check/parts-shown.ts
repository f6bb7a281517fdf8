import type { Part } from '../claim/types';
import { practice } from './frame';
import { namedModel } from './models';
import { askPhoto, countWords, listWords } from './wording';
import { defineWritten } from './written';

const partWords: Record<Part, string> = {
  body: 'the front',
  lining: 'the inside',
  stitching: 'the stitching',
  trim: 'the trim',
  hardware: 'the metal parts',
  zip: 'the zip',
  handle: 'the handles',
  strap: 'the strap',
  base: 'the base',
  edge: 'the corners and edges',
  tab: 'the handle tabs',
  lock: 'the lock',
  'dust-bag': 'the dust bag',
  pattern: 'the back',
};
/** What a buyer looks at on any bag. Common practice, no source. */
const anyBag: Part[] = ['body', 'pattern', 'base', 'edge', 'handle', 'hardware', 'lining'];

export const partsShown = defineWritten({
  id: 'parts-shown',
  family: 'photos',
  title: 'There are as many photos as parts to be seen',
  failureTitle: 'There are fewer photos than parts to be seen',
  kinds: ['gap'],
  basis: 'One photo shows one part well; look for pictures of the actual piece.',
  innocent: 'One photo may show several parts, and some marketplaces allow only a few.',
  settles: 'Photos of the parts named.',
  source: practice,
  needs: { listing: ['photos', 'model', 'title'], claims: ['model'], models: true },
  run({ listing, claims, models }) {
    const named = namedModel(models, { model: claims.model, fields: [listing.model, listing.title] });
    const parts = named?.model.parts?.length ? named.model.parts : anyBag;
    const needed = parts.length + 1;
    if (listing.photos.length >= needed) return [];
    const seen = listWords([...parts.map((part) => partWords[part]), 'the stamp']);
    return [
      {
        kind: 'gap',
        statement: `${countWords(listing.photos.length, 'photo')} for ${needed} parts to be seen: ${seen}.`,
        claims: named?.claims ?? [],
        asks: [askPhoto('parts', `Could you add photos of any of these that are not shown yet: ${seen}?`)],
      },
    ];
  },
});
