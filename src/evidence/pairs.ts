import { type Span, spansMeet } from '../span';
import { evidenceId } from './ids';
import { hardReachOf, reachOf } from './room';
import { type RuleId, rules } from './rule';
import type { Rule, Side } from './rule/types';
import type { Evidence } from './types';

/** Two statements that a rule holds against each other. */
export interface Pair {
  rule: RuleId;
  /** Ids of evidence. */
  left: string;
  right: string;
  /** They share a date; they do so only with the room that they are given; they do not. */
  relation: 'agrees' | 'within-room' | 'conflicts';
  /** Of a conflict: it cannot be, if both are true. Else it is unlikely. */
  hard: boolean;
  /** Of an agreement: it could have come out otherwise. */
  informs: boolean;
}

/**
 * Every two statements of different facts that some rule compares, and how they stand to each other: the only place
 * where two dates are compared. Work: the product of the statements of a rule's two kinds.
 */
export function pairsOf(evidence: readonly Evidence[]): Pair[] {
  const dated = evidence.filter(({ spans }) => spans.length > 0);
  const of = (side: Side) => dated.filter((piece) => sideOf(piece) === side);
  return rules.flatMap((rule) =>
    of(rule.left).flatMap((left) =>
      of(rule.right)
        .filter(({ basis }) => basis !== left.basis)
        .map((right) => ({ rule: rule.id, left: left.id, right: right.id, ...stand(rule, left, right) })),
    ),
  );
}

function sideOf({ id, from, basis }: Evidence): Side | null {
  if (from.kind === 'claim' && basis.startsWith('claimed-purchase:')) return 'purchase';
  if (from.kind === 'claim') return id === evidenceId.claim(from.id) ? 'claimed-date' : null;
  return from.kind === 'reading' ? 'code' : from.kind === 'mark' ? 'mark' : null;
}

function stand(rule: Rule, left: Evidence, right: Evidence): Pick<Pair, 'relation' | 'hard' | 'informs'> {
  const meet = (a: readonly Span[], b: readonly Span[]) => a.some((one) => b.some((other) => spansMeet(one, other)));
  if (meet(left.spans, right.spans)) return { relation: 'agrees', hard: false, informs: rule.informs(left, right) };
  if (meet(reachOf(left), reachOf(right))) return { relation: 'within-room', hard: false, informs: false };
  const [a, b] = [hardReachOf(left), hardReachOf(right)];
  return { relation: 'conflicts', hard: a !== null && b !== null && !meet(a, b), informs: false };
}
