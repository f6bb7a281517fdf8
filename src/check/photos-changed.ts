import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck, practice } from './frame';

export const photosChanged = defineCheck({
  id: 'photos-changed',
  family: 'changes',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ gone: z.number(), of: z.number(), left: z.number(), readAt: z.string() }),
  needs: { previous: true, listing: ['photos'] },
  run({ previous, listing }) {
    const now = new Set(listing.photos.flatMap(({ url, alternatives }) => [url, ...alternatives].map(fileOf)));
    // A page that makes its photos itself gives them new addresses each time: those say nothing about which are gone.
    const gone = previous.photos.filter(({ url }) => !url.startsWith('blob:') && !now.has(fileOf(url)));
    if (gone.length === 0 || listing.photos.length >= previous.photos.length) return [];
    const [of, left] = [previous.photos.length, listing.photos.length];
    const data = { gone: gone.length, of, left, readAt: previous.readAt };
    return [{ kind: 'doubt', data, asks: [askFor('gone-photos', {})] }];
  },
});

/** The last part of an address without its query: what stays the same when a host or a size changes. */
const fileOf = (url: string) => url.replace(/[?#].*/s, '').replace(/^.*\//, '');
