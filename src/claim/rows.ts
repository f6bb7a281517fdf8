import { foldedSet, foldWords, type Label, labelOf, partWords, splitLabelled, tableWords, withoutEnd } from '../text';
import { findParts } from './parts';
import { type Passage, passage } from './passage';

/**
 * Labels of a page's own fields whose words tell of the piece beyond what the listing's field keeps of them. A colour is
 * none: "Colore: Cuoio" is tan, not leather.
 */
const ofPiece: readonly (Label | null)[] = ['condition', 'material', 'serial'];
/** Labels that name no field of a listing and are of the piece: its year, its purchase, its country, repairs, notes. */
const more = foldedSet(Object.values(tableWords('piece-label')).flat());
const partNames = foldedSet(Object.values(partWords).flat());
const longestLabel = 40;
const most = 100;

function isOfPiece(label: string): boolean {
  const named = labelOf(label);
  if (named !== null || label.length > longestLabel) return ofPiece.includes(named);
  const folded = foldWords(label);
  return more.has(folded.text) || findParts(folded).length > 0;
}

/**
 * The rows of the page's own tables and lists that are of the piece ("Year: 1994", "Lining: red suede"), each a passage
 * of its own, out of what the page shows beside title and description. Rows of the seller, the sale and the site are
 * none: their dates and sizes are no piece's.
 */
export function rowsOf(rest: Passage): Passage[] {
  const lines = rest.text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const rows: string[] = [];
  for (let at = 0; at < lines.length && rows.length < most; at += 1) {
    const line = lines[at] as string;
    const pair = splitLabelled(line);
    if (pair) {
      if (isOfPiece(pair.name) && !ofFilter.test(pair.value)) rows.push(`${pair.name}: ${pair.value}`);
      continue;
    }
    // A label on a line of its own, its value on the next.
    const value = lines[at + 1];
    if (value === undefined || !isLabel(line) || isLabel(value) || splitLabelled(value)) continue;
    const label = withoutEnd(line, /[\s:：]/);
    if (isOfPiece(label) && !ofFilter.test(value)) rows.push(`${label}: ${value}`);
  }
  return rows.map((row) => passage('row', row, rest.language, rest.title));
}

/** "Leather (120)": a choice of a list's filters, with how many there are of it. */
const ofFilter = /\(\d+\)$/;

/** Whether a line is a label and nothing else: of a listing's field, of the piece, or a part's bare name. */
function isLabel(line: string): boolean {
  if (labelOf(line) !== null) return true;
  const { text } = foldWords(withoutEnd(line, /[\s:：]/));
  return more.has(text) || partNames.has(text);
}
