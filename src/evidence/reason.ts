import { largestAgreeing } from './agreeing';
import { type Cells, dateCells, placeCells } from './cells';
import { minimalConflicts } from './conflicts';
import { explain } from './explain';
import { type Pair, type Pairing, pairing } from './pairs';
import type { AgreeingSet, Agreement, Conflict, Reasoning } from './reasoning-types';
import { onlyHardPlaces, withHardReach, withReach } from './room';
import { apartAsSaid, rules } from './rule';
import type { Rule } from './rule/types';
import { stretchOf } from './stretch';
import { toldOf } from './told';
import { type Dating, datingOf, type Evidence } from './types';

/**
 * What the evidence says together: the largest agreeing sets, the smallest sets that cannot all hold, and which
 * single wrong fact would explain everything. Exact: a piece allows a union of spans and a set of places, a set holds
 * when some date and some place are allowed by all of it. What agrees is asked of the dates as they are said; what
 * conflicts, of the dates within the room that each is given, and what conflicts for sure, of those beyond doubt. How
 * two facts stand to each other that a rule compares, the rule says. Pure;
 * the order of the evidence decides only the order of what is equal.
 */
export function reason(evidence: readonly Evidence[]): Reasoning {
  const speaking = datingOf(evidence).filter((piece) => piece.spans.length > 0 || piece.places.length > 0);
  const [dates, places] = [dateCells(speaking), placeCells(speaking)];
  const { of, all } = pairing(evidence);
  const pairs = all();
  const dateCellsOf = [dateCells(withReach(speaking)), dateCells(withHardReach(speaking))] as const;
  const overDate = conflictsOver(speaking, ...dateCellsOf, 'date', of);
  const overPlace = conflictsOver(speaking, places, placeCells(onlyHardPlaces(speaking)), 'place', of);
  const together = [...overDate.conflicts, ...overPlace.conflicts];
  const own = pairs.filter(({ rule }) => ofOneCode.has(rule)).flatMap((pair) => conflictOf(pair, together));
  const ids = new Set(speaking.map(({ id }) => id));
  const aside = pairs.filter(({ left, right, rule }) => !(ids.has(left) && ids.has(right)) && !apartAsSaid.has(rule));
  const dated = [...together, ...own].sort(heaviestFirst);
  const conflicts = [...dated, ...aside.flatMap((pair) => conflictOf(pair, together)).sort(heaviestFirst)];
  const complete = overDate.complete && overPlace.complete;
  const agrees = dated.length === 0 && (complete || stretchOf(withReach(speaking)) !== null);
  return {
    agrees,
    agreeing: largestAgreeing(
      dates,
      places,
      speaking.map((piece) => ({ basis: piece.basis, hard: piece.strength === 'hard', follows: follows(piece) })),
    ).map((pieces) =>
      agreeingSet(
        pieces.map((piece) => speaking[piece]!),
        pairs,
      ),
    ),
    agreements: pairs.flatMap(agreementOf),
    conflicts,
    conflictsComplete: complete,
    explanations: agrees ? [] : explain(speaking),
  };
}

const heaviestFirst = (a: Conflict, b: Conflict): number =>
  Number(a.strength === 'soft') - Number(b.strength === 'soft') || a.evidence.length - b.evidence.length;

/** Rules that compare a code with what follows from it: reading by reading, which dates alone cannot tell. */
const ofOneCode = new Set<string>(rules.flatMap((rule: Rule) => (rule.ofOneCode ? [rule.id] : [])));

/** What a rule says of two facts alone, unless it stands among the conflicts already. */
function conflictOf({ relation, left, right, over, hard, rule }: Pair, known: readonly Conflict[]): Conflict[] {
  if (relation !== 'conflicts') return [];
  const isSame = (one: Conflict) => one.evidence.length === 2 && [left, right].every((id) => one.evidence.includes(id));
  if (known.some(isSame)) return [];
  return [{ evidence: [left, right], over, strength: hard ? 'hard' : 'soft', rule }];
}

const agreementOf = ({ relation, informs, narrows, left, right, over, rule }: Pair): Agreement[] =>
  relation === 'agrees' && informs !== null ? [{ evidence: [left, right], over, rule, informs, narrows }] : [];

/** A statement that stands only as long as the reading it comes from. */
const follows = ({ from }: Dating): boolean => from.kind === 'system' || from.kind === 'plant';

function agreeingSet(pieces: readonly Dating[], pairs: readonly Pair[]): AgreeingSet {
  const facts = new Set(pieces.filter((piece) => !follows(piece)).map((piece) => piece.basis)).size;
  const stretch = stretchOf(pieces) ?? { spans: [], places: [] };
  return { evidence: pieces.map((piece) => piece.id), facts, told: toldOf(pieces, pairs), ...stretch };
}

/** What is said first of a fact that gives several statements: what was read, before what follows from it. */
const plainOrder = { claim: 0, reading: 0, mark: 0, construction: 0, plant: 1, system: 2 } as const;
const plainness = (pieces: readonly Dating[]) => pieces.reduce((sum, { from }) => sum + plainOrder[from.kind], 0);

/** The same fact with the same dates is one piece for the search for conflicts: the one that says it most plainly. */
function distinctPieces(evidence: readonly Dating[], soft: Cells, hard: Cells): number[] {
  const plainest = new Map<string, number>();
  for (const [piece, { basis }] of evidence.entries()) {
    const key = JSON.stringify([basis, soft.allowed[piece]!.toString(36), hard.allowed[piece]!.toString(36)]);
    const known = plainest.get(key);
    if (known === undefined || plainness([evidence[piece]!]) < plainness([evidence[known]!])) plainest.set(key, piece);
  }
  return [...plainest.values()].sort((a, b) => a - b);
}

/** Minimal conflicts, said once for the same facts: the hard one where there is a choice. */
function conflictsOver(
  all: readonly Dating[],
  softCells: Cells,
  hardCells: Cells,
  over: Conflict['over'],
  pairOf: Pairing['of'],
) {
  const distinct = distinctPieces(all, softCells, hardCells);
  const evidence = distinct.map((piece) => all[piece]!);
  const search = (cells: Cells) =>
    minimalConflicts({ ...cells, allowed: distinct.map((piece) => cells.allowed[piece]!) });
  const [forSure, atAll] = [search(hardCells), search(softCells)];
  const facts = [...new Set(evidence.map((piece) => piece.basis))];
  const factBit = new Map(facts.map((basis, at) => [basis, 1n << BigInt(at)]));
  const sets = new Map<string, { set: number[]; hard: boolean }>();
  for (const set of forSure.sets) sets.set(set.join(), { set, hard: true });
  for (const set of atAll.sets) if (!sets.has(set.join())) sets.set(set.join(), { set, hard: false });
  // Two facts may need three statements to conflict: a code with its system against a date.
  const ruleBetween = (pieces: Dating[]) =>
    pieces.flatMap((one) => pieces.map((other) => pairOf(one, other, over)?.rule)).find((rule) => rule) ?? null;
  const found = [...sets.values()].flatMap(({ set, hard: apart }) => {
    const pieces = set.map((piece) => evidence[piece]!);
    const pair = pieces.length === 2 ? pairOf(pieces[0]!, pieces[1]!, over) : null;
    if (pair && pair.relation !== 'conflicts') return [];
    const hard = pair ? pair.hard : apart;
    const bases = pieces.reduce((bits, { basis }) => bits | (factBit.get(basis) ?? 0n), 0n);
    const factCount = new Set(pieces.map(({ basis }) => basis)).size;
    return [{ pieces, bases, factCount, hard, rule: pair?.rule ?? (factCount === 2 ? ruleBetween(pieces) : null) }];
  });
  found.sort(
    (a, b) =>
      Number(b.hard) - Number(a.hard) ||
      a.factCount - b.factCount ||
      a.pieces.length - b.pieces.length ||
      plainness(a.pieces) - plainness(b.pieces),
  );
  const kept: typeof found = [];
  for (const one of found) {
    // A conflict of the same facts, or of fewer of them, that is at least as hard stands already: it came earlier.
    if (!kept.some((other) => (one.bases & other.bases) === other.bases)) kept.push(one);
  }
  return {
    conflicts: kept.map(({ pieces, hard, rule }) => conflict(pieces, over, hard, rule)),
    complete: forSure.complete && atAll.complete,
  };
}

const conflict = (
  pieces: readonly Dating[],
  over: Conflict['over'],
  hard: boolean,
  rule: Conflict['rule'],
): Conflict => ({
  evidence: pieces.map((piece) => piece.id),
  over,
  strength: hard ? 'hard' : 'soft',
  rule,
});
