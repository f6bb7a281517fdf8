import { askPhoto } from './wording';
import { defineWritten } from './written';

export const photosOffered = defineWritten({
  id: 'photos-offered',
  family: 'photos',
  title: 'The listing has photos',
  failureTitle: 'The listing has no photo',
  kinds: ['gap'],
  basis: 'Look for pictures of the actual item.',
  innocent: 'The photos may load only after a click, or the page could not be read in full.',
  settles: 'Photos of the piece itself.',
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  needs: { listing: ['photos'] },
  run: ({ listing }) =>
    listing.photos.length > 0
      ? []
      : [
          {
            kind: 'gap',
            statement: 'The page offers no photo of the piece.',
            asks: [
              askPhoto('parts', 'Could you add photos of the front, the back, the base, the inside and the stamp?'),
            ],
          },
        ],
});
