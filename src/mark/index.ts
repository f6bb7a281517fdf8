import type { FoundWhere } from './define';
import { marks } from './registry';
import type { MarkRead } from './types';

export type { FoundWhere, Mark } from './define';
export { type NotedRow, notedRows, type RowName, rowNames } from './row-names';
export type { DiamondFault, MarkCaution, MarkSays, PatentedFastener, PlainCaution } from './says';
export type { MarkRead } from './types';
export { marks };

/** Longest text that is searched, in characters; what is beyond is not read. */
const longestText = 50_000;
/** Marks that are read from one text at most: a page of more is a list of numbers, not a piece. */
const mostMarks = 200;

/** The words as part of an id; with it, two lines of one photo that are searched apart give two ids. */
const slug = (words: string) =>
  words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 32);

/**
 * Every public mark in a text, in the order of the registry and of the text. The same words of one mark are given
 * once. Ids follow from the mark, the place and the position, so that the same text gives the same ids.
 */
export function findMarks(text: string, where: FoundWhere): MarkRead[] {
  const { foundIn, photoId } = where;
  const searched = text.slice(0, longestText);
  const found = marks.flatMap((mark) => {
    const seen = new Set<string>();
    const taken = new Map<string, number>();
    return mark.find(searched, where).flatMap((found) => {
      const words = searched.slice(found.start, found.end);
      const said = `${words} ${JSON.stringify(found.says)}`;
      if (seen.has(said)) return [];
      seen.add(said);
      const name = [mark.id, photoId ?? foundIn, found.start, slug(words)].join('-');
      const nth = (taken.get(name) ?? 0) + 1;
      taken.set(name, nth);
      const id = nth === 1 ? name : `${name}-${nth}`;
      const { spans, strength, verified, source, says, cautions = [] } = found;
      const places = found.places ?? [];
      return [
        {
          id,
          mark: mark.id,
          words,
          foundIn,
          photoId,
          spans,
          places,
          strength,
          verified,
          source,
          says,
          cautions: [...cautions],
        },
      ];
    });
  });
  return found.slice(0, mostMarks);
}
