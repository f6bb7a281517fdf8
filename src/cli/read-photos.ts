import { type PhotoRead, readPhoto } from '../photo';
import { type Problem, problem, reported } from '../problem';
import { stampReader } from '../stamp';
import { type OpenEngines, openEngines } from './engines';
import type { PhotoFiles } from './listing-photos';
import { openPhotoFile } from './photo-file';

const unread = (photoId: string, problem: Problem): PhotoRead => ({ state: 'unread', photoId, problem });

/**
 * Reads every photo file, one after the other; what cannot be read is an unread photo with its problem and the rest
 * goes on. `progress` is told before each photo.
 */
export async function readPhotoFiles(
  files: PhotoFiles['files'],
  progress: (done: number, all: number) => void,
): Promise<PhotoRead[]> {
  if (files.every(({ path }) => path === null)) return files.map(({ photoId }) => unread(photoId, noFile(photoId)));
  let open: OpenEngines;
  try {
    open = await openEngines();
  } catch (error) {
    const what = `the recognisers could not start: ${error instanceof Error ? error.message : 'unknown reason'}`;
    const none = { code: 'no-recogniser', where: 'reader', what, remedy: 'Install the packages again (npm ci).' };
    return files.map(({ photoId }) => unread(photoId, none));
  }
  try {
    const photos: PhotoRead[] = [];
    for (const [index, { photoId, path }] of files.entries()) {
      progress(index + 1, files.length);
      photos.push(path === null ? unread(photoId, noFile(photoId)) : await readOne(photoId, path, open));
    }
    return photos;
  } finally {
    await open.close();
  }
}

async function readOne(photoId: string, path: string, { engines }: OpenEngines): Promise<PhotoRead> {
  const opened = await openPhotoFile(path);
  if (!opened.ok) return unread(photoId, opened.problem);
  try {
    return await readPhoto(opened.value.image, photoId, [stampReader(engines)], opened.value);
  } catch (error) {
    return unread(photoId, problem('photo-reading-failed', path, reported(error)));
  }
}

const noFile = (photoId: string): Problem => ({
  code: 'photo-file-missing',
  where: photoId,
  what: 'the folder of photos holds no file for it',
  remedy: 'Save the photo under the name that the page gives it.',
});
