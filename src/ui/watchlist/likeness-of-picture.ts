import { greyOf, likenessIn, readImageHeader } from '../../photo';
import { decodePhoto } from '../../reader/decode-photo';
import type { LikenessOfPicture } from '../../watch';

/** Kept pictures are small: more pixels tell nothing more. */
const mostPixels = 1_000_000;

/** What a kept picture is known again by, decoded by the browser. */
export const likenessOfPicture: LikenessOfPicture = async ({ hash, bytes }) => {
  const own = new Uint8Array(bytes);
  const header = readImageHeader(own, hash);
  const pixels = header.ok ? await decodePhoto(own, header.value, mostPixels) : null;
  return pixels && likenessIn(greyOf(pixels));
};
