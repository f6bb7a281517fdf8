import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { matchPhotoFiles } from '../../../src/cli/listing-photos';
import { withPhotos } from '../check/sample';

function folderOf(...names: string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'listing-photos-'));
  for (const name of names) writeFileSync(join(folder, name), 'x');
  return folder;
}
const matched = (folder: string, listing = withPhotos(2)) => {
  const result = matchPhotoFiles(listing, folder);
  if (!result.ok) throw new Error(result.problem.code);
  const { files } = result.value;
  return { ...result.value, names: files.map(({ path }) => path && basename(path)) };
};

describe('matchPhotoFiles', () => {
  it('finds the file that bears the name in the address', () => {
    expect(matched(folderOf('1.jpg', '2.jpg', '3.jpg')).names).toEqual(['1.jpg', '2.jpg']);
  });

  it('takes another ending, and leaves a photo without a file unread', () => {
    expect(matched(folderOf('2.png')).names).toEqual([null, '2.png']);
  });

  it('looks at every address of a photo, without its query', () => {
    const listing = withPhotos(1);
    const [photo] = listing.photos;
    const photos = photo
      ? [{ ...photo, url: 'https://attic-arcade.example/p?id=1', alternatives: ['/x/Big%20One.JPG?w=9'] }]
      : [];
    expect(matched(folderOf('big one.jpg'), { ...listing, photos }).names).toEqual(['big one.jpg']);
  });

  it('lets every image file stand for a photo when no name fits, and says so', () => {
    const { names, listing } = matched(folderOf('b.jpg', 'a.png', 'notes.txt'));
    expect(names).toEqual(['a.png', 'b.jpg']);
    expect(listing.photos.map(({ id }) => id)).toEqual(['file-1', 'file-2']);
    expect(listing.problems.map(({ code }) => code)).toEqual(['photos-by-folder']);
  });

  it('refuses a folder that is not there', () => {
    expect(matchPhotoFiles(withPhotos(1), '/none/such')).toMatchObject({
      ok: false,
      problem: { code: 'photo-folder-missing' },
    });
  });
});
