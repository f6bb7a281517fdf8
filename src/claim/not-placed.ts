import { clauseAround } from '../text';
import { type ClaimDraft, type Passage, saidIn } from './passage';

const longest = 100;

/** A date or a material that is said of no known thing, with the clause that it stands in. */
export function notPlaced(from: Passage, of: 'date' | 'material', [start, end]: readonly [number, number]): ClaimDraft {
  const { text, at } = from.folded;
  const clause = clauseAround(text, start, end);
  const [first, last] = clause.end - clause.start > longest ? [start, end] : [clause.start, Math.max(end, clause.end)];
  const source = (index: number) => (at ? (at[index] as number) : index);
  const [opens, closes] = [source(first), source(last - 1) + 1];
  const said = from.text.slice(opens, closes);
  const lead = said.length - said.trimStart().length;
  const words = said.trim();
  return {
    kind: 'not-placed',
    of,
    ...saidIn(from, { start: opens + lead, end: opens + lead + words.length, words }, 0.3),
  };
}
