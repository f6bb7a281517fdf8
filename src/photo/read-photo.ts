import type { Problem, Result } from '../problem';
import type { Observation } from './observation-types';
import { observe } from './observe';
import { observeFile } from './observe-file';
import { type FileOfPhoto, leastSide, tooSmall } from './open';
import { type PhotoRead, printedIn } from './read-types';
import { type ReadingCopy, readingCopy } from './reading-copy';
import type { PixelImage } from './types';

/** A photo as a reader is handed it. */
export interface PhotoToRead {
  photoId: string;
  pixels: PixelImage;
  copy: ReadingCopy;
  /** The way to more of its pixels than were decoded. */
  file?: FileOfPhoto;
}

/**
 * Reads more in a photo than pixels tell: it has engines of its own and stands in a folder above this one. Without its
 * answer the photo is unread, for nobody could say what it shows.
 */
export type PhotoReader = (photo: PhotoToRead) => Promise<Result<Observation[]>>;

/**
 * One photo: what the readers see in it, then what the observers measure, who are told the print that was read, and what
 * its file tells.
 */
export async function readPhoto(
  pixels: PixelImage,
  photoId: string,
  readers: readonly PhotoReader[],
  file?: FileOfPhoto,
): Promise<PhotoRead> {
  const { width, height } = pixels;
  const unread = (problem: Problem): PhotoRead => ({ state: 'unread', photoId, problem });
  if (Math.min(width, height) < leastSide) return unread(tooSmall(`photo ${photoId}`, width, height));
  const copy = readingCopy(pixels);
  try {
    const observations: Observation[] = [];
    for (const reader of readers) {
      const seen = await reader({ photoId, pixels, copy, ...(file ? { file } : {}) });
      if (!seen.ok) return unread(seen.problem);
      observations.push(...seen.value);
    }
    const read: PhotoRead = { state: 'read', photoId, width, height, observations };
    const context = { photoId, grey: copy.grey, printed: printedIn(read) };
    const told = file ? observeFile(file.bytes, photoId) : [];
    return { ...read, observations: [...observations, ...observe(pixels, context), ...told] };
  } finally {
    copy.letGo();
  }
}
