import type { Part } from '../../claim/types';
import { partWords, phraseFinder } from '../../text';
import { wordsFor } from '../words';

/** Parts of a piece that a text names, in order. */
export const partsIn = phraseFinder<Part>({
  ...partWords,
  // Pages that tell of many pieces speak of their linings; no listing does, and its table runs in every page.
  lining: [...partWords.lining, ...wordsFor('part-lining')],
});

/** The part of a piece that a short label names, alone. */
export function partNamed(label: string): Part | null {
  const [hit, ...more] = partsIn(label);
  const rest = hit ? label.slice(0, hit.start) + label.slice(hit.end) : label;
  return hit && more.length === 0 && rest.replace(/[^\p{L}]/gu, '').length <= 4 ? hit.value : null;
}
