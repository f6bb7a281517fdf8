import { type RuleId, rules } from './rule';
import { comparable, type Stand, speaks, standOf } from './rule/stand';
import type { Rule, Side } from './rule/types';
import type { Says } from './says';
import { type Evidence, isDating } from './types';

/** Two statements that a rule holds against each other. */
export interface Pair extends Stand {
  rule: RuleId;
  over: Rule['over'];
  /** Ids of evidence. */
  left: string;
  right: string;
  /**
   * One of them is a code whose date lies outside the time of its own system. That such a code cannot be is told by
   * itself; what it would agree with is no agreement, and what it conflicts with is told of it alone.
   */
  withheld: boolean;
}

export interface Pairing {
  /** Every two statements of different facts that some rule compares. */
  all: () => Pair[];
  /** These two, in either order; null where no rule compares them. */
  of: (one: Evidence, other: Evidence, over: Rule['over']) => Pair | null;
}

/** Statements of one kind that are held against each other at most: a page full of years is not compared pair by pair. */
const mostOfOneKind = 20;

const sides: Record<Says['kind'], Side> = {
  made: 'claimed-date',
  bought: 'purchase',
  origin: 'origin',
  country: 'country',
  code: 'code',
  system: 'system',
  plant: 'plant',
  mark: 'mark',
  material: 'material',
  'other-material': 'other-material',
  model: 'model',
};
const isOf = (some: readonly Side[], piece: Evidence): boolean =>
  some.includes(isDating(piece) ? sides[piece.says.kind] : piece.says.kind);

/**
 * How statements stand to each other by the rules: the only place where two facts are compared. Work of `all`: the
 * product of the statements of a rule's two kinds.
 */
export function pairing(evidence: readonly Evidence[]): Pairing {
  const impossible = againstThemselves(evidence);
  const judges = rules.map((rule) => ({ rule, judge: judgeOf(rule, evidence, impossible) }));
  return {
    all: () => judges.flatMap(({ rule, judge }) => couples(rule, evidence).map(([left, right]) => judge(left, right))),
    of(one, other, over) {
      for (const { rule, judge } of judges) {
        if (rule.over !== over) continue;
        for (const [left, right] of [[one, other] as const, [other, one] as const])
          if (isOf(rule.left, left) && isOf(rule.right, right) && comparable(rule, left, right))
            return judge(left, right);
      }
      return null;
    },
  };
}

export const pairsOf = (evidence: readonly Evidence[]): Pair[] => pairing(evidence).all();

/** All that the rule compares, each two once. */
function couples(rule: Rule, evidence: readonly Evidence[]): [Evidence, Evidence][] {
  const isSelf = rule.left.length === 1 && rule.right.length === 1 && rule.left[0] === rule.right[0];
  const of = (some: readonly Side[]) => {
    const pieces = evidence.filter((piece) => speaks(rule, piece) && isOf(some, piece));
    return isSelf ? firstOfEach(pieces) : pieces;
  };
  const rights = of(rule.right);
  const lefts = of(rule.left);
  // Two that could stand on either side are held against each other once.
  const order = new Map(lefts.map((piece, at) => [piece, at]));
  return lefts.flatMap((left, at) =>
    rights
      .filter((right) => comparable(rule, left, right) && at < (order.get(right) ?? lefts.length))
      .map((right): [Evidence, Evidence] => [left, right]),
  );
}

/** The first statement of each fact, at most `mostOfOneKind` of them. */
function firstOfEach(pieces: readonly Evidence[]): Evidence[] {
  const first = new Map<string, Evidence>();
  for (const piece of pieces) if (!first.has(piece.basis)) first.set(piece.basis, piece);
  return [...first.values()].slice(0, mostOfOneKind);
}

function judgeOf(
  rule: Rule & { id: RuleId },
  evidence: readonly Evidence[],
  excluded: ReadonlySet<Evidence>,
): (left: Evidence, right: Evidence) => Pair {
  const impossible = rule.over === 'date' && !rule.evenImpossible ? excluded : new Set<Evidence>();
  const agreeing = new Map<Evidence, Evidence[]>();
  const agreeingWith = (right: Evidence): Evidence[] => {
    const known = agreeing.get(right);
    if (known) return known;
    const found = evidence.filter((left) => {
      if (!isOf(rule.left, left) || !speaks(rule, left) || impossible.has(right)) return false;
      const { relation, informs } = standOf(rule, left, right);
      return relation === 'agrees' && informs !== null;
    });
    agreeing.set(right, found);
    return found;
  };
  return (left, right) => {
    const stand = standOf(rule, left, right);
    const { yieldsTo } = rule;
    const yields = stand.hard && yieldsTo && agreeingWith(right).some((other) => yieldsTo(left, other));
    const withheld = impossible.has(left) || impossible.has(right);
    return {
      rule: rule.id,
      over: rule.over,
      left: left.id,
      right: right.id,
      ...stand,
      hard: stand.hard && !yields,
      informs: withheld ? null : stand.informs,
      narrows: stand.narrows && !withheld,
      withheld,
    };
  };
}

/** Codes whose date lies outside the time of their own system. */
const againstThemselves = (evidence: readonly Evidence[]): Set<Evidence> =>
  new Set(evidence.filter((piece) => isDating(piece) && (piece.ownTime?.system ?? 'within') !== 'within'));
