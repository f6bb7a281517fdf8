import type { Source } from '../source';
import { stretchOf } from './stretch';
import { type Dating, datingOf, type Evidence } from './types';

/** What is weighed: the part of a finding that says what it rests on. */
export interface Weighable {
  kind: 'contradiction' | 'doubt' | 'gap' | 'agreement';
  /** Ids of evidence. */
  evidence: readonly string[];
  /** Ids of claims; what is evidence of them counts as well. */
  claims: readonly string[];
  source: Source;
}

/**
 * How a finding stands. Not a score: `order` only puts findings in a row, by rules that `derivation` gives one by one.
 *
 * - `backed`: hard facts, and a further independent fact takes the same side;
 * - `hard`: hard facts only;
 * - `soft`: at least one habit, hedged or quoted statement, or row that was not verified;
 * - `bare`: no dated or placed evidence; it rests on the page or the photos and on the rule.
 */
export interface Weight {
  standing: 'backed' | 'hard' | 'soft' | 'bare';
  /** Compared from the first to the last; more is heavier. */
  order: number[];
  /** What the order comes from, for its sentences. */
  derivation: Derivation;
}

export interface Derivation {
  /** Dated or placed statements that it rests on, and the different facts that they come from. */
  statements: number;
  facts: number;
  /** The first of them that is soft. */
  soft: Dating | null;
  /** Other facts that take its side; `against` is the one that they stand against, null where they agree with all. */
  backing: { facts: number; against: Dating | null };
  source: Source['kind'];
}

const kindOrder = { contradiction: 3, doubt: 2, gap: 1, agreement: 0 } as const;
const sourceOrder: Record<Source['kind'], number> = {
  published: 3,
  'maker-file': 2,
  photo: 2,
  listing: 1,
  user: 1,
  practice: 1,
  memory: 0,
};

/**
 * Derives the weight of a finding from what it rests on: hard over soft, independent facts over the same fact said
 * again, backed by other facts over alone, a published rule over one from memory. Pure.
 */
export function weighFinding(finding: Weighable, all: readonly Evidence[]): Weight {
  const evidence = datingOf(all);
  const pieces = piecesOf(finding, evidence);
  const facts = new Set(pieces.map((piece) => piece.basis)).size;
  const isHard = pieces.length > 0 && pieces.every((piece) => piece.strength === 'hard');
  const backing = pieces.length > 0 ? backingOf(finding.kind, pieces, evidence) : none;
  const standing = pieces.length === 0 ? 'bare' : !isHard ? 'soft' : backing.facts > 0 ? 'backed' : 'hard';
  return {
    standing,
    order: [
      kindOrder[finding.kind],
      Number(isHard),
      Number(backing.facts > 0),
      facts,
      backing.facts,
      sourceOrder[finding.source.kind],
    ],
    derivation: {
      statements: pieces.length,
      facts,
      soft: pieces.find((piece) => piece.strength === 'soft') ?? null,
      backing,
      source: finding.source.kind,
    },
  };
}

/** Negative when `a` is lighter, 0 when they are equal. */
export function compareWeights(a: Weight, b: Weight): number {
  const at = a.order.findIndex((value, index) => value !== b.order[index]);
  return at < 0 ? 0 : a.order[at]! - b.order[at]!;
}

/**
 * The evidence that a finding names, and for each of its claims one statement: a loose claim contradicts something
 * with all the room that its words have, and agrees as it was said.
 */
function piecesOf({ kind, evidence: ids, claims }: Weighable, all: readonly Dating[]): Dating[] {
  const evidence = kind === 'contradiction' ? all.map(atItsLoosest) : all;
  const named = evidence.filter(({ id }) => ids.includes(id));
  const said = [...new Set(claims)].flatMap((claim) =>
    (['claim', 'construction'] as const).flatMap((from) => {
      const own = evidence.filter((piece) => piece.from.kind === from && piece.from.id === claim);
      return own[0] ?? [];
    }),
  );
  return [...new Set([...named, ...said])];
}

const atItsLoosest = (piece: Dating): Dating =>
  piece.strength === 'soft' && piece.hardReach ? { ...piece, spans: piece.hardReach, strength: 'hard' } : piece;

const none: Derivation['backing'] = { facts: 0, against: null };

/**
 * Other facts that take a side. For an agreement: those that agree with all of it. Else: those that stand against one
 * of its pieces and agree with all the others, counted for the piece that most stand against.
 */
function backingOf(
  kind: Weighable['kind'],
  pieces: readonly Dating[],
  evidence: readonly Dating[],
): Derivation['backing'] {
  const own = new Set(pieces.map((piece) => piece.basis));
  const others = evidence.filter((piece) => !own.has(piece.basis) && piece.spans.length + piece.places.length > 0);
  const factCount = (some: readonly Dating[]) => new Set(some.map((piece) => piece.basis)).size;
  if (kind === 'agreement') {
    return { facts: factCount(others.filter((other) => stretchOf([...pieces, other]) !== null)), against: null };
  }
  let best = none;
  for (const against of pieces) {
    const rest = pieces.filter((piece) => piece.basis !== against.basis);
    if (rest.length === 0) continue;
    const siding = others.filter((other) => !stretchOf([against, other]) && stretchOf([...rest, other]));
    const facts = factCount(siding);
    // Told as it was said, not at its loosest.
    if (facts > best.facts) best = { facts, against: evidence.find(({ id }) => id === against.id) ?? against };
  }
  return best;
}
