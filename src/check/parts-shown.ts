import * as z from 'zod';
import type { Part } from '../claim/types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

/** What a buyer looks at on any bag. Common practice, no source. */
const anyBag: Part[] = ['body', 'pattern', 'base', 'edge', 'handle', 'hardware', 'lining'];

export const partsShown = defineCheck({
  id: 'parts-shown',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({ photos: z.number(), parts: z.array(z.string()) }),
  needs: { onePiece: true, listing: ['photos'], perhaps: ['model'] },
  run({ listing, fact }) {
    const named = 'is' in fact.model ? fact.model.is : null;
    const parts: readonly string[] = named?.model.parts?.length ? named.model.parts : anyBag;
    // One more for the stamp.
    if (listing.photos.length > parts.length) return [];
    return [
      {
        kind: 'gap',
        data: { photos: listing.photos.length, parts: [...parts] },
        claims: named?.claims ?? [],
        asks: [askFor('parts-to-show', { parts: [...parts] })],
      },
    ];
  },
});
