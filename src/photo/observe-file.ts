import { readExif } from './header-exif';
import { type Observation, observed } from './observation-types';

/** What a photo's file tells beside its pixels. Most marketplaces and chats take it out; a camera's clock may be wrong. */
export function observeFile(bytes: Uint8Array, photoId: string): Observation[] {
  const exif = readExif(bytes);
  const told = [
    ['taken-at', exif?.takenAt ?? null],
    ['camera', exif?.camera ?? null],
  ] as const;
  return told.flatMap(([what, value]): Observation[] => (value === null ? [] : [observed(photoId, what, value)]));
}
