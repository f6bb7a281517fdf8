import * as z from 'zod';
import type { Part } from '../claim/types';
import { partsSeenIn, stampAsPart } from '../photo/read-types';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

/** What a buyer looks at on any bag. Common practice, no source. */
const anyBag: Part[] = ['body', 'pattern', 'base', 'edge', 'handle', 'hardware', 'lining'];

export const partsShown = defineCheck({
  id: 'parts-shown',
  family: 'photos',
  kinds: ['gap'],
  source: practice,
  data: z.strictObject({
    photos: z.number(),
    parts: z.array(z.string()),
    /** All that are looked at, where the buyer said of some that photos show them: `parts` are then the others. */
    of: z.array(z.string()).optional(),
  }),
  needs: { onePiece: true, listing: ['photos'], photos: 'any', perhaps: ['model'] },
  run({ listing, photos, fact }) {
    const named = 'is' in fact.model ? fact.model.is : null;
    const of: readonly string[] = named?.model.parts?.length ? named.model.parts : anyBag;
    const told = new Set(photos.flatMap(partsSeenIn));
    const parts = of.filter((part) => !told.has(part));
    const untold = listing.photos.length - photos.filter((photo) => partsSeenIn(photo).length > 0).length;
    // A photo of which nobody said what it shows may show one of them; one more is the stamp's.
    const forStamp = told.has(stampAsPart) ? 0 : 1;
    if (parts.length === 0 || untold >= parts.length + forStamp) return [];
    return [
      {
        kind: 'gap',
        data: { photos: listing.photos.length, parts, ...(told.size > 0 ? { of: [...of] } : {}) },
        claims: named?.claims ?? [],
        asks: [askFor('parts-to-show', { parts })],
      },
    ];
  },
});
