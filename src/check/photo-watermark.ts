import { orCopied } from './copies';
import { practice } from './frame';
import { askPhoto, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

const address =
  /\b(?:https?:\/\/)?(?:www\.)?([a-z0-9-]{3,40}(?:\.[a-z0-9-]{2,40})*\.(?:com|net|org|shop|store|co\.uk|uk|de|fr|it|es|nl|jp|eu|example))\b/i;

export const photoWatermark = defineWritten({
  id: 'photo-watermark',
  family: 'photos',
  title: 'No photo carries the address of another site',
  failureTitle: 'A photo carries the address of another site',
  kinds: ['doubt'],
  basis: 'A photo with another site’s address in it was first shown there.',
  innocent: 'The seller may sell there too, or the address may be printed on the maker’s own label.',
  settles: 'A photo of the piece without the address.',
  source: practice,
  needs: { listing: ['url'], photos: 'read', makerName: true },
  run({ listing, photos, photoWords, makerName }) {
    const own = hostOf(listing.url);
    // Words that a copy shows stand in the photo too; those that it shows none of may still be there.
    const found = photos.flatMap((photo): WrittenSpeech[] => {
      if (photo.state !== 'read') return [];
      for (const line of photo.printed) {
        const host = address.exec(line)?.[1]?.toLowerCase();
        if (!host || sameSite(host, own) || isMakers(host, makerName)) continue;
        return [
          {
            kind: 'doubt',
            key: photo.photoId,
            statement: `${photoWords(photo.photoId).replace(/^p/, 'P')} carries the address ${quote(host)}, which is not this marketplace.`,
            photos: [photo.photoId],
            asks: [
              askPhoto(
                'own-photo',
                'Could you add photos of the piece itself, one of them with today’s date on a slip of paper?',
              ),
            ],
          },
        ];
      }
      return [];
    });
    return orCopied(found, photos);
  },
});

const hostOf = (url: string) => (/^https?:\/\/([^/?#:]+)/i.exec(url)?.[1] ?? '').toLowerCase().replace(/^www\./, '');
const sameSite = (a: string, b: string) => b !== '' && (a === b || a.endsWith(`.${b}`) || b.endsWith(`.${a}`));
const isMakers = (host: string, maker: string | null) =>
  maker !== null && host.replace(/[^a-z]/g, '').includes(maker.toLowerCase().replace(/[^a-z]/g, ''));
