import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck } from './frame';

export const photosOffered = defineCheck({
  id: 'photos-offered',
  family: 'photos',
  kinds: ['gap'],
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  data: z.strictObject({}),
  needs: { listing: ['photos'] },
  run: ({ listing }) =>
    listing.photos.length > 0 ? [] : [{ kind: 'gap', data: {}, asks: [askFor('first-photos', {})] }],
});
