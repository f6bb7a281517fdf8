import { type PartName, partWords, phraseFinder } from '../../text';

const finder = phraseFinder(partWords);

/** The part of a piece that a short label names, alone. */
export function partNamed(label: string): PartName | null {
  const [hit, ...more] = finder(label);
  const rest = hit ? label.slice(0, hit.start) + label.slice(hit.end) : label;
  return hit && more.length === 0 && rest.replace(/[^\p{L}]/gu, '').length <= 4 ? hit.value : null;
}

/** Parts of a piece that a text names, in order. */
export const partsIn = finder;
