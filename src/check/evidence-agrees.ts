import type { Evidence } from '../evidence/types';
import { practice } from './frame';
import { commonAsks } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** Pairs of facts that a check of their own speaks of; here they would be said twice. */
const pairChecks: [string, string][] = [
  ['claim', 'code'],
  ['claim', 'mark'],
  ['code', 'mark'],
  ['claim', 'claim'],
  ['claim', 'construction'],
  ['code', 'construction'],
  ['code', 'code'],
];

/** The reasoning lists them hard ones first; what more a page full of dates gives would only bury them. */
const mostConflicts = 8;

const groupOf = ({ from }: Evidence) =>
  from.kind === 'reading' || from.kind === 'system' || from.kind === 'plant' ? 'code' : from.kind;

export const evidenceAgrees = defineWritten({
  id: 'evidence-agrees',
  family: 'time',
  title: 'All that dates or places the piece can hold together',
  failureTitle: 'What dates or places the piece cannot all hold together',
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A piece was made at one time and in one place, which everything about it allows.',
  innocent: 'One of the facts may be misread, or a part may be a later repair.',
  settles: 'Whichever of the facts named is easiest to show in a sharp photo.',
  source: practice,
  needs: { evidence: true, reasoning: true },
  run({ evidence, reasoning }) {
    const known = new Map(evidence.map((piece) => [piece.id, piece]));
    const pieces = (ids: string[]) => ids.flatMap((id) => known.get(id) ?? []);
    const conflicts = reasoning.conflicts
      .filter((conflict) => !hasOwnCheck(pieces(conflict.evidence)))
      .slice(0, mostConflicts);
    if (conflicts.length > 0)
      return conflicts.map((conflict): WrittenSpeech => {
        const explained = reasoning.explanations[0];
        return {
          kind: conflict.strength === 'hard' ? 'contradiction' : 'doubt',
          key: conflict.evidence.join('+'),
          statement: `${conflict.statement}.`,
          ...(explained ? { innocent: `${explained.statement}.` } : {}),
          evidence: conflict.evidence,
          asks: [conflict.over === 'date' ? commonAsks.madeDate : commonAsks.origin],
        };
      });
    const most = reasoning.agreeing[0];
    if (!reasoning.agrees || !most || most.facts < 2) return [];
    return [{ kind: 'agreement', statement: `${most.statement}.`, evidence: most.evidence }];
  },
});

function hasOwnCheck(pieces: Evidence[]): boolean {
  const bases = new Map(pieces.map((piece) => [piece.basis, groupOf(piece)]));
  if (bases.size < 2) return true;
  const [a = '', b = ''] = [...bases.values()].sort();
  return bases.size === 2 && pairChecks.some(([first, second]) => first === a && second === b);
}
