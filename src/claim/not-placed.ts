import { clauseAround, sourceRange } from '../text';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import type { ClaimOf } from './types';

const longest = 100;

/** A date, a material, a code or a size that is said of no known thing, with the clause that it stands in. */
export function notPlaced(
  from: Passage,
  of: ClaimOf<'not-placed'>['of'],
  [opens, closes]: readonly [number, number],
): ClaimDraft {
  const { text } = from.folded;
  const clause = clauseAround(text, opens, closes);
  const [first, last] =
    clause.end - clause.start > longest ? [opens, closes] : [clause.start, Math.max(closes, clause.end)];
  const said = sourceRange(from.folded, first, last);
  const start = said.start + said.words.length - said.words.trimStart().length;
  const words = said.words.trim();
  return { kind: 'not-placed', of, ...saidIn(from, { start, end: start + words.length, words }, 0.3) };
}
