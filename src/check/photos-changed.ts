import { practice } from './frame';
import { askPhoto, countWords } from './wording';
import { defineWritten } from './written';

export const photosChanged = defineWritten({
  id: 'photos-changed',
  family: 'changes',
  title: 'No photo was taken away',
  failureTitle: 'Photos were taken away since the last look',
  kinds: ['doubt'],
  basis: 'A photo that was shown and is gone may have shown something that matters.',
  innocent: 'The seller may have replaced poor photos with better ones.',
  settles: 'The photos that are gone.',
  source: practice,
  needs: { previous: true, listing: ['photos'] },
  run({ previous, listing }) {
    const now = new Set(listing.photos.flatMap(({ url, alternatives }) => [url, ...alternatives].map(fileOf)));
    // A page that makes its photos itself gives them new addresses each time: those say nothing about which are gone.
    const gone = previous.photos.filter(({ url }) => !url.startsWith('blob:') && !now.has(fileOf(url)));
    if (gone.length === 0 || listing.photos.length >= previous.photos.length) return [];
    const day = previous.readAt.slice(0, 10);
    const statement = `${countWords(gone.length, 'photo')} of ${previous.photos.length} shown on ${day} ${gone.length === 1 ? 'is' : 'are'} gone; ${listing.photos.length} are left.`;
    const ask = askPhoto('gone-photos', 'Could you send me the photos that were in the listing before?');
    return [{ kind: 'doubt', statement, asks: [ask] }];
  },
});

/** The last part of an address without its query: what stays the same when a host or a size changes. */
const fileOf = (url: string) => url.replace(/[?#].*/s, '').replace(/^.*\//, '');
