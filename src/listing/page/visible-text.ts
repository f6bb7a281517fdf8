import { tidyText } from '../structured/entities';
import type { Snapshot, TextPiece } from './snapshot';

/** Which pieces of an element's text are wanted. */
export interface Wanted {
  /** Text for screen readers only. */
  assistive?: boolean;
  /** Text that is struck through. */
  struck?: boolean;
  /** Elements that are left out with all they hold. */
  outside?: Uint8Array | undefined;
  /** Where reading may end: no more than about so many characters are wanted. */
  most?: number | undefined;
}

const endsLetters = /[\p{Ll}\d)][:.]?$/u;
const beginsWord = /^[\p{Lu}(]/u;
/** A `sup` or a smaller last pair of digits is the cents: "12" + "99". */
const cents = /^\s*\d{2}\s*$/;

/** A sum with its sign; of what stands beside it, only two digits are its cents. */
const sum = /[\p{Sc}]\s?\d[\d.,]*$/u;
const noCents = /^\d(?!\d(?!\d))/;

/** The text of an element as a reader sees it, blocks on their own lines. */
export function visibleText(snapshot: Snapshot, index: number, wanted: Wanted = {}): string {
  const element = snapshot.elements[index];
  return element ? joinPieces(snapshot, element.pieces[0], element.pieces[1], wanted) : '';
}

/** The pieces of a half-open range as text. Struck text is left out unless it is wanted. */
export function joinPieces(snapshot: Snapshot, from: number, to: number, wanted: Wanted): string {
  const limit = wanted.most ?? Number.POSITIVE_INFINITY;
  const parts: string[] = [];
  let length = 0;
  let last: TextPiece | null = null;
  for (let at = from; at < to; at += 1) {
    const piece = snapshot.pieces[at] as TextPiece;
    if (piece.shown === 'hidden' || (piece.shown === 'assistive' && wanted.assistive !== true)) continue;
    if (piece.struck && wanted.struck !== true) continue;
    if (wanted.outside && wanted.outside[piece.at] === 1) continue;
    parts.push(jointBetween(snapshot, last, piece), piece.text);
    length += piece.text.trim().length;
    if (length > limit) break;
    last = piece.text.trim() === '' ? (piece.text === ' ' && last ? last : null) : piece;
  }
  return withCells(parts.join(''));
}

/** Stands for the edge of a table's cell while blanks are made one. */
const edge = '\ue000';

/** Tidied text in which a tab parts the cells of a table's row. */
const withCells = (text: string): string =>
  tidyText(text.replace(/\t[ \t]*/g, edge))
    .replace(/ ?\ue000[ \ue000]*/g, '\t')
    .replace(/^\t|\t$/gm, '')
    .trim();

/**
 * What stands between two neighbouring pieces: a decimal point before raised cents, a space between elements whose
 * words would run together ("Brand" + "Ondrasse"), otherwise nothing.
 */
function jointBetween(snapshot: Snapshot, before: TextPiece | null, after: TextPiece): string {
  if (!before || before.at === after.at) return '';
  if (snapshot.elements[after.at]?.tag === 'sup' && /\d\s*$/.test(before.text) && cents.test(after.text)) return '.';
  if (endsLetters.test(before.text) && beginsWord.test(after.text)) return ' ';
  if (sum.test(before.text) && noCents.test(after.text)) return ' ';
  return /[\p{L}\p{M})_]{2}$/u.test(before.text) && /^\d/.test(after.text) ? ' ' : '';
}
