import type { Problem } from '../problem';
import { select } from './page/dom';
import type { Snapshot } from './page/snapshot';
import { visibleText } from './page/visible-text';
import { sourcesOfImage } from './photos/image-sources';
import type { PhotoSet } from './photos/photo-set';
import { pickProblem } from './pick-problem';
import { wordsInAttributes } from './picked-words';
import type { PageExtract, Pick } from './types';

/** Finds what the user pointed at on this site: words for `readFacts`, photos at once. Unfound choices are reported. */
export function applyPicks(
  picks: readonly Pick[],
  snapshot: Snapshot,
  base: string,
  photos: PhotoSet,
): { picked: PageExtract['picked']; problems: Problem[] } {
  const picked: PageExtract['picked'] = [];
  const problems: Problem[] = [];
  const indexOf = new Map(snapshot.elements.map(({ element }, index) => [element, index]));
  for (const { field, selector } of picks) {
    const element = snapshot.roots.flatMap((root) => select(root, selector)).find((one) => indexOf.has(one));
    const index = element ? (indexOf.get(element) ?? -1) : -1;
    if (field === 'photo' && element) {
      const image = [element, ...select(element, 'img')].find((one) => sourcesOfImage(one, base).length > 0);
      if (image) photos.add(sourcesOfImage(image, base), 'user-pick', wordsInAttributes(image));
      else problems.push(pickProblem('pick-unreadable', field, selector));
      continue;
    }
    const words = element ? visibleText(snapshot, index, { assistive: true }) || wordsInAttributes(element) : '';
    if (words === '') problems.push(pickProblem('pick-not-found', field, selector));
    else picked.push({ field, words: words.slice(0, 20_000), where: selector });
  }
  return { picked, problems };
}
