import type { Evidence } from '../evidence/types';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Pairs of facts that a check of their own speaks of; here they would be said twice. */
const pairChecks: [string, string][] = [
  ['claim', 'mark'],
  ['claim', 'claim'],
  ['claim', 'construction'],
];
/** Pairs whose checks need the maker's file: without one they are told here, or nowhere. */
const makerChecks: [string, string][] = [
  ['claim', 'code'],
  ['code', 'mark'],
  ['code', 'construction'],
];

/** The reasoning lists them hard ones first; what more a page full of dates gives would only bury them. */
const mostConflicts = 8;

const groupOf = ({ from }: Evidence) =>
  from.kind === 'reading' || from.kind === 'system' || from.kind === 'plant' ? 'code' : from.kind;

const innocent = 'One of the facts may be misread, or a part may be a later repair.';

export const evidenceAgrees = defineWritten({
  id: 'evidence-agrees',
  family: 'time',
  title: 'All that dates or places the piece can hold together',
  failureTitle: 'What dates or places the piece cannot all hold together',
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A piece was made at one time and in one place, which everything about it allows.',
  innocent,
  settles: 'Whichever of the facts named is easiest to show in a sharp photo.',
  source: practice,
  needs: { evidence: true, reasoning: true, decodings: true, makerName: true },
  run({ evidence, reasoning, decodings, makerName }) {
    const known = new Map(evidence.map((piece) => [piece.id, piece]));
    const pieces = (ids: string[]) => ids.flatMap((id) => known.get(id) ?? []);
    const quoted = new Set(decodings.filter(({ from }) => from.kind === 'claim').map(({ id }) => id));
    const told = makerName === null ? pairChecks : [...pairChecks, ...makerChecks];
    const conflicts = reasoning.conflicts
      .filter((conflict) => !hasOwnCheck(pieces(conflict.evidence), told, quoted))
      .slice(0, mostConflicts);
    if (conflicts.length > 0)
      return conflicts.map((conflict): WrittenSpeech => {
        return {
          kind: isContradiction(conflict.strength, pieces(conflict.evidence)) ? 'contradiction' : 'doubt',
          key: conflict.evidence.join('+'),
          statement: `${conflict.statement}.`,
          innocent: innocentWords(pieces(conflict.evidence), makerName, reasoning.explanations[0]?.statement),
          evidence: conflict.evidence,
          asks: [conflict.over === 'date' ? commonAsks.madeDate : commonAsks.origin],
        };
      });
    const most = reasoning.agreeing[0];
    // What holds together only with the room that loose dates have is no conflict, and nothing to praise.
    if (!reasoning.agrees || !most || most.facts < 2 || !evidence.every(isIn(most.evidence))) return [];
    return [{ kind: 'agreement', statement: `${most.statement}.`, evidence: most.evidence }];
  },
});

/** Two codes on one piece are no contradiction by themselves: one may be that of a repair, or of a part. */
const isContradiction = (strength: Evidence['strength'], pieces: Evidence[]): boolean =>
  strength === 'hard' && pieces.some((piece) => groupOf(piece) !== 'code');

const isIn = (ids: string[]) => (piece: Evidence) =>
  ids.includes(piece.id) || piece.spans.length + piece.places.length === 0;

function hasOwnCheck(pieces: Evidence[], told: [string, string][], quoted: ReadonlySet<string>): boolean {
  const bases = new Map(pieces.map((piece) => [piece.basis, groupOf(piece)]));
  if (bases.size < 2) return true;
  const [a = '', b = ''] = [...bases.values()].sort();
  if (bases.size > 2) return false;
  // A code that is quoted against one that is shown is a check of its own; two that are shown have none.
  if (a === 'code' && b === 'code') return new Set(pieces.map(({ from }) => quoted.has(from.id))).size > 1;
  return told.some(([first, second]) => first === a && second === b);
}

/** What would explain it; of a code without its maker's file first that other makers write codes in other ways. */
function innocentWords(pieces: Evidence[], makerName: string | null, explained: string | undefined): string {
  const shape =
    makerName === null && pieces.some((piece) => groupOf(piece) === 'code')
      ? 'No maker file reads this code: this maker may write its codes in another way.'
      : '';
  const words = [shape, explained ? `${explained}.` : ''].filter(Boolean).join(' ');
  return words || innocent;
}
