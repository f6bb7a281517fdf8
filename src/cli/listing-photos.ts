import { readdirSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Listing } from '../listing';
import { fail, type Problem, type Result, succeed } from '../problem';

/** Photo files by photo id, and the listing with the photos that they stand for. */
export interface PhotoFiles {
  listing: Listing;
  /** Path for each photo id; null when the folder holds no file for it. */
  files: { photoId: string; path: string | null }[];
}

const imageName = /\.(jpe?g|png|webp|gif|avif|bmp|tiff?|jxl|heic|jfif)$/i;

/**
 * Finds the file of each photo of a listing in a folder: by the file name in the photo's addresses, else by the name
 * without its ending. When no file fits any photo, every image file of the folder stands for a photo of the listing,
 * in the order of the names, and the listing's `problems` say so.
 */
export function matchPhotoFiles(listing: Listing, folder: string): Result<PhotoFiles> {
  let names: string[];
  try {
    names = readdirSync(folder).sort();
  } catch {
    const remedy = 'Give the folder that holds the photo files.';
    return fail({ code: 'photo-folder-missing', where: folder, what: 'the folder of photos cannot be read', remedy });
  }
  const byName = new Map(names.map((name) => [name.toLowerCase(), name]));
  const byStem = new Map(names.filter((name) => imageName.test(name)).map((name) => [stemOf(name), name]));
  const files = listing.photos.map(({ id, url, alternatives }) => {
    const wanted = [url, ...alternatives].map(fileNameOf);
    const name =
      wanted.map((one) => byName.get(one)).find((one) => one !== undefined) ??
      wanted.map((one) => byStem.get(stemOf(one))).find((one) => one !== undefined);
    return { photoId: id, path: name === undefined ? null : join(folder, name) };
  });
  if (files.some(({ path }) => path !== null)) return succeed({ listing, files });
  const images = names.filter((name) => imageName.test(name));
  if (images.length === 0) return succeed({ listing, files });
  return succeed(standIn(listing, folder, images));
}

function standIn(listing: Listing, folder: string, images: string[]): PhotoFiles {
  const photos = images.map((name, index): Listing['photos'][number] => ({
    id: `file-${index + 1}`,
    url: name,
    alternatives: [],
    width: null,
    height: null,
    alt: '',
    origins: ['user-pick'],
  }));
  const problem: Problem = {
    code: 'photos-by-folder',
    where: basename(folder),
    what: `no file in the folder has the name of one of the page's ${listing.photos.length} photos, so its ${images.length} image files stand for them`,
    remedy: 'Name the files as the page names its photos to match them.',
  };
  return {
    listing: { ...listing, photos, problems: [...listing.problems, problem] },
    files: images.map((name, index) => ({ photoId: `file-${index + 1}`, path: join(folder, name) })),
  };
}

/** The file name at the end of an address, without its query, in small letters. */
function fileNameOf(address: string): string {
  const name = address.replace(/[?#].*/s, '').replace(/^.*\//, '');
  try {
    return decodeURIComponent(name).toLowerCase();
  } catch {
    return name.toLowerCase();
  }
}

const stemOf = (name: string) => name.toLowerCase().replace(/\.[a-z0-9]+$/, '');
