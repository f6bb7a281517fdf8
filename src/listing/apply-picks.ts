import type { PageExtract, PageNote } from './extract-types';
import { select, selectSome } from './page/dom';
import type { Slices } from './page/slices';
import type { Snapshot } from './page/snapshot';
import { visibleText } from './page/visible-text';
import { sourcesOfImage } from './photos/image-sources';
import type { PhotoSet } from './photos/photo-set';
import type { Pick } from './pick-types';
import { wordsInAttributes } from './picked-words';

const maxWords = 20_000;

/** Finds what the user pointed at on this site: words for `readFacts`, photos at once. Unfound choices are reported. */
export function applyPicks(
  picks: readonly Pick[],
  { snapshot, base }: { snapshot: Snapshot; base: string },
  photos: PhotoSet,
  slices: Slices,
): { picked: PageExtract['picked']; notes: PageNote[] } {
  const picked: PageExtract['picked'] = [];
  const notes: PageNote[] = [];
  if (picks.length === 0) return { picked, notes };
  const indexOf = new Map(snapshot.elements.map(({ element }, index) => [element, index]));
  for (const { field, selector } of picks) {
    const element = snapshot.roots.flatMap((root) => select(root, selector)).find((one) => indexOf.has(one));
    const index = indexOf.get(element as Element) ?? -1;
    if (field === 'photo' && element) {
      const image = [element, ...selectSome(element, 'img', 60)].find(
        (one) => sourcesOfImage(one, base, slices).length > 0,
      );
      if (image) photos.add(sourcesOfImage(image, base, slices), 'user-pick', wordsInAttributes(image));
      else notes.push({ code: 'pick-unreadable', where: selector, count: 0, field });
      continue;
    }
    const words = element
      ? visibleText(snapshot, index, { assistive: true, most: maxWords }) || wordsInAttributes(element)
      : '';
    if (words === '') notes.push({ code: 'pick-not-found', where: selector, count: 0, field });
    else picked.push({ field, words: words.slice(0, maxWords), where: selector });
  }
  return { picked, notes };
}
