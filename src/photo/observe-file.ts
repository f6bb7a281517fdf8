import { readExif } from './header-exif';
import type { Observation } from './observation-types';
import { observationId } from './observe/observer';

/** What a photo's file tells beside its pixels. Most marketplaces and chats take it out; a camera's clock may be wrong. */
export function observeFile(bytes: Uint8Array, photoId: string): Observation[] {
  const exif = readExif(bytes);
  const told = [
    ['taken-at', exif?.takenAt ?? null],
    ['camera', exif?.camera ?? null],
  ] as const;
  return told.flatMap(([what, value]): Observation[] =>
    value === null
      ? []
      : [{ id: observationId(photoId, what), what, value, uncertainty: null, unit: null, where: null, by: 'machine' }],
  );
}
