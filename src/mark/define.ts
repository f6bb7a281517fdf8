import type { Document, Strength } from '../source';
import type { Span } from '../span';
import type { MarkCaution, MarkSays } from './says';

/** What one mark says where it was found, before it is given an id and the photo. */
export interface MarkFound {
  /** Character positions of the mark's words in the text, half-open. */
  start: number;
  end: number;
  /** All candidate spans; empty when the mark dates nothing by itself. */
  spans: Span[];
  places?: string[];
  /** Hard only for a rule without exception whose row was held against a document. */
  strength: Strength;
  /** Whether the row used was held against a document, or stands from memory. */
  verified: boolean;
  source: Document;
  says: MarkSays;
  cautions?: readonly MarkCaution[];
}

/** Where the text stands: the listing's own words, or print read from one photo. */
export interface FoundWhere {
  foundIn: 'listing' | 'photo';
  photoId: string | null;
}

/** A public mark: something written on a piece that dates or places it whoever made it. */
export interface Mark {
  /** File name without ending; also the name of its test. */
  id: string;
  find: (text: string, where: FoundWhere) => MarkFound[];
}

/** Makes a mark. A row from memory that claims to be hard is a bug and throws when it is found. */
export const defineMark = (mark: Mark): Mark => ({
  ...mark,
  find: (text, where) =>
    mark.find(text, where).map((found) => {
      if (found.strength === 'hard' && !found.verified) throw new Error(`${mark.id}: a row from memory is never hard`);
      return found;
    }),
});

/** A published document, or the same from memory: then the screen says "not verified". */
export const rowSource = (text: string, verified: boolean): Document => ({
  kind: verified ? 'published' : 'memory',
  text,
});

const speaksOfLabel =
  /\b(?:label|tag|lining|stamp|mark|print|reads?|inside|interior|étiquette|griffe|etikett|schild|innen|etichetta|etiqueta|etiket)\w*\b[^.!?\n]{0,80}$/iu;

/**
 * Whether print stands on the piece as far as the text can say: print read from a photo does; a listing's words do
 * when the sentence speaks of a label, a tag or the inside before it. A shop's own address, telephone and barcode in
 * a listing say nothing of the piece.
 */
export const standsOnPiece = (text: string, start: number, where: FoundWhere): boolean =>
  where.foundIn === 'photo' || speaksOfLabel.test(text.slice(Math.max(0, start - 100), start));
