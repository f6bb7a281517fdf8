import * as z from 'zod';
import { askFor } from './asks';
import { orWhyCopied } from './copies';
import { defineCheck, practice } from './frame';
import { photoNumber } from './types';

const address =
  /\b(?:https?:\/\/)?(?:www\.)?([a-z0-9-]{3,40}(?:\.[a-z0-9-]{2,40})*\.(?:com|net|org|shop|store|co\.uk|uk|de|fr|it|es|nl|jp|eu|example))\b/i;

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
      if (photo.state !== 'read') return [];
      for (const line of photo.printed) {
        const host = address.exec(line)?.[1]?.toLowerCase();
        if (!host || sameSite(host, own) || isMakers(host, makerName)) continue;
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
