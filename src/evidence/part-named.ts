import { plainName } from '../maker';
import type { MakerFile } from '../maker/types';
import { partWords } from '../text';

/**
 * The part that words name and nothing but name: one that the file speaks of, by its own words for it, else one of those
 * that sellers name. Null for any other words: "tab of the strap" may be either.
 */
export function partNamed(words: string, { parts, numbers }: Pick<MakerFile, 'parts' | 'numbers'>): string | null {
  const said = plainName(words);
  if (said === '') return null;
  const is = (name: string) => plainName(name) === said;
  const own = [
    ...parts.map((part) => ({ id: part.id, names: [part.id.replaceAll('-', ' '), ...part.words] })),
    ...numbers.map(({ part }) => ({ id: part, names: [part.replaceAll('-', ' ')] })),
  ].flatMap(({ id, names }) => (names.some(is) ? [id] : []));
  const listed = Object.entries(partWords).flatMap(([part, names]) => (names.some(is) ? [part] : []));
  const found = new Set(own.length > 0 ? own : listed);
  const [one, ...others] = found;
  return one !== undefined && others.length === 0 ? one : null;
}
