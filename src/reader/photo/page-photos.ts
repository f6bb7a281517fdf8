import type { OutputOf } from '../../message/protocol';
import type { Result, Told } from '../../problem';
import { drawMadePhoto } from './draw-made-photo';
import { mostPhotoBytes } from './photo-limits';
import { requestPhoto, tooLarge } from './request-photo';

type Fetched = Result<OutputOf<'photo.fetchInPage'>>;

/** What the page script does with photos. It is given addresses by the background, which has checked them. */

/**
 * Fetches as the page's own scripts could: the browser's cross-origin rules decide. Where an address cannot be followed
 * to its end, the picture that the page shows of it is drawn, as far as the browser lets us look into it.
 */
export async function fetchInPage({ url, withinMs }: { url: string; withinMs: number }): Promise<Fetched> {
  const isMade = url.startsWith('blob:');
  // Cookies travel to the page's own origin only, as they do with its pictures.
  const credentials = !isMade && new URL(url).origin === location.origin ? 'same-origin' : 'omit';
  const requested = await requestPhoto(url, { credentials, withinMs });
  if (requested.ok) return answerWith(requested.value);
  const { code } = requested.problem;
  if (isMade ? code === 'photo-too-large' : code !== 'photo-redirected') return requested;
  const drawn = await drawMadePhoto(url);
  if (drawn !== null && (isMade || drawn.size <= mostPhotoBytes)) return answerWith(drawn);
  if (!isMade || code === 'photo-is-drawing') return requested;
  return refuse({ code: 'photo-without-address', where: 'page', data: { photos: 1 } });
}

async function answerWith(photo: Blob): Promise<Fetched> {
  if (photo.size > mostPhotoBytes) return refuse(tooLarge('page'));
  return { ok: true, value: { base64: await base64Of(photo), mediaType: photo.type } };
}

/** By way of a file reader: in Firefox a page script may not look into the bytes of a fetched buffer. */
function base64Of(photo: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.addEventListener('load', () => resolve(String(reader.result).replace(/^[^,]*,/, '')));
    reader.addEventListener('error', () => reject(reader.error));
    reader.readAsDataURL(photo);
  });
}

const refuse = (problem: Told): Fetched => ({ ok: false, problem });
