import * as z from 'zod';
import { seenIn } from '../photo/read-types';
import { askFor } from './asks';
import { orWhyCopied } from './copies';
import { defineCheck, practice } from './frame';
import { photoNumber } from './types';

export const photoWatermark = defineCheck({
  id: 'photo-watermark',
  family: 'photos',
  kinds: ['doubt'],
  source: practice,
  data: z.strictObject({ photo: photoNumber, host: z.string() }),
  needs: { listing: ['url'], photos: 'read', makerName: true },
  run({ listing, photos, photoNumber: number, makerName }) {
    const own = hostOf(listing.url);
    // Words that a copy shows stand in the photo too; those that it shows none of may still be there.
    const found = photos.flatMap((photo) => {
      for (const { value } of seenIn(photo, 'watermark')) {
        const host = String(value);
        if (sameSite(host, own) || isMakers(host, makerName)) continue;
        return [
          {
            kind: 'doubt' as const,
            key: photo.photoId,
            data: { photo: number(photo.photoId), host },
            photos: [photo.photoId],
            asks: [askFor('own-photo', {})],
          },
        ];
      }
      return [];
    });
    return orWhyCopied(found, photos);
  },
});

const hostOf = (url: string) => (/^https?:\/\/([^/?#:]+)/i.exec(url)?.[1] ?? '').toLowerCase().replace(/^www\./, '');
const sameSite = (a: string, b: string) => b !== '' && (a === b || a.endsWith(`.${b}`) || b.endsWith(`.${a}`));
const isMakers = (host: string, maker: string | null) =>
  maker !== null && host.replace(/[^a-z]/g, '').includes(maker.toLowerCase().replace(/[^a-z]/g, ''));
