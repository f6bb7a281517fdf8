import type { Source, Strength } from '../source';
import type { Span } from '../span';

/** What one mark says where it was found, before it is given an id and the photo. */
export interface MarkFound {
  /** Character positions of `words` in the text, half-open. */
  start: number;
  end: number;
  /** All candidate spans; empty when the mark dates nothing by itself. */
  spans: Span[];
  places?: string[];
  /** Hard only for a rule without exception whose row was held against a document. */
  strength: Strength;
  /** Whether the row used was held against a document, or stands from memory. */
  verified: boolean;
  source: Source;
  statement: string;
  caution?: string;
}

/** A public mark: something written on a piece that dates or places it whoever made it. */
export interface Mark {
  /** File name without ending; also the name of its test. */
  id: string;
  /** As the screen names it. */
  title: string;
  /** What the mark can say, and what it cannot. */
  says: string;
  find: (text: string) => MarkFound[];
}

/** Makes a mark; a row from memory that claims to be hard is a bug and throws when it is found. */
export const defineMark = (mark: Mark): Mark => ({
  ...mark,
  find: (text) =>
    mark.find(text).map((found) => {
      if (found.strength === 'hard' && !found.verified) throw new Error(`${mark.id}: a row from memory is never hard`);
      return found;
    }),
});

/** All matches of a global pattern with their positions. */
export const matchesOf = (text: string, pattern: RegExp): RegExpExecArray[] => [...text.matchAll(pattern)];

/** A published document, or the same from memory: then the screen says "not verified". */
export const rowSource = (text: string, verified: boolean): Source => ({
  kind: verified ? 'published' : 'memory',
  text,
});
