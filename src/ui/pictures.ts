import type { KeptPicture } from '../watch';

/** The picture that was kept of a stamped line. */
export const pictureOfLine =
  (pictures: readonly KeptPicture[]) =>
  (photoId: string, lineId: string): string | null =>
    pictures.find((kept) => kept.photoId === photoId && kept.lineId === lineId)?.picture ?? null;
