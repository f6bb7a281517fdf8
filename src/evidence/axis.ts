import { type Span, unionOf } from '../span';
import type { AxisBar, AxisLayout, AxisRow } from './axis-types';
import { evidenceId } from './ids';
import type { Reasoning, Stretch } from './reasoning-types';
import { isTold, type Known } from './told';
import { type Dating, datingOf, type Evidence, statedOf } from './types';

/** A date this many years away from the core of the evidence does not stretch the axis; its bar runs off the edge. */
const reachYears = 10;
const mostTicks = 6;
/** Sides of a tie that are named; how many more there are is said. */
const mostSides = 3;
const dayMs = 86_400_000;

/**
 * Where everything stands on one time axis. Pure arithmetic: positions are shares of the axis from 0 to 1, so that any
 * screen can draw it. Null when no evidence speaks of date. The axis spans whole years around the core of the
 * evidence: the closed spans of hard evidence, else those of soft evidence, else every end there is; ends farther than
 * `reachYears` from the core are cut off and said to run on.
 */
export function layOutAxis(all: readonly Evidence[], reasoning: Reasoning): AxisLayout | null {
  const evidence = datingOf(all);
  const dated = evidence.filter((piece) => piece.spans.length > 0);
  const years = yearsOf(dated);
  if (!years) return null;
  const scale = scaleOf(years);
  const sides = sidesOf(evidence, reasoning);
  const stretches = sides.flatMap(({ by, stretches: own }) =>
    own.map((stretch) => ({ ...stretch, by: knownBy.filter((one) => by.has(one)) })),
  );
  const named = stretches.slice(0, mostSides);
  const apart = new Set(reasoning.conflicts.filter(({ over }) => over === 'date').flatMap((one) => one.evidence));
  return {
    years,
    ticks: ticksOf(years).map((year) => ({ year, at: scale.at(`${String(year).padStart(4, '0')}-01-01`) })),
    rows: mergeRepeated(dated).map((pieces) => rowOf(pieces, scale, standOf(pieces, sides, apart))),
    agreeing: {
      bars: unionOf(named.flatMap(({ spans }) => spans)).flatMap((span) => scale.bar(span) ?? []),
      sides: named,
      more: stretches.length - named.length,
    },
  };
}

const knownBy: readonly Known[] = ['read', 'seen', 'said'];

/** Facts that agree, as many as on any other side: the evidence, and where it agrees, one entry for each ground. */
interface Side {
  evidence: Set<string>;
  by: Set<Known>;
  stretches: Stretch[];
}

/**
 * The largest agreeing sets, those of the same facts as one side: a loose date that is met at its edge and in its
 * middle is not two opinions. None when no two facts agree that could have excluded each other.
 */
function sidesOf(evidence: readonly Dating[], { agreeing }: Reasoning): Side[] {
  const basisOf = new Map(evidence.map(({ id, basis }) => [id, basis]));
  const sides = new Map<string, Side>();
  for (const set of agreeing.filter(({ told }) => isTold(told.date))) {
    const facts = [...new Set(set.evidence.map((id) => basisOf.get(id)))].sort().join('\n');
    const { evidence: known, by, stretches } = sides.get(facts) ?? { evidence: [], by: [], stretches: [] };
    // What only one fact says of the ground is not agreed.
    const places = isTold(set.told.place) ? set.places : [];
    const same = stretches.find((stretch) => stretch.places.join() === places.join());
    const spans = unionOf([...(same?.spans ?? []), ...set.spans]);
    sides.set(facts, {
      evidence: new Set([...known, ...set.evidence]),
      by: new Set([...by, ...knownBy.filter((one) => set.told.date[one].length > 0)]),
      stretches: [...stretches.filter((stretch) => stretch !== same), { spans, places }],
    });
  }
  return [...sides.values()];
}

const yearOf = (day: string) => Number(day.slice(0, 4));
const endsOf = (spans: readonly Span[]): number[] =>
  spans.flatMap(({ from, to }) => [from, to].filter((day) => day !== null).map(yearOf));
const isClosed = ({ from, to }: Span) => from !== null && to !== null;

function yearsOf(dated: readonly Dating[]): [number, number] | null {
  const closed = (strength: Dating['strength']) =>
    endsOf(dated.filter((piece) => piece.strength === strength).flatMap(({ spans }) => spans.filter(isClosed)));
  const every = endsOf(dated.flatMap(({ spans }) => spans));
  const core = [closed('hard'), closed('soft'), every].find((ends) => ends.length > 0);
  if (!core) return null;
  const [low, high] = [Math.min(...core), Math.max(...core)];
  const near = every.filter((year) => year >= low - reachYears && year <= high + reachYears);
  const [first, last] = [Math.min(low, ...near), Math.max(high, ...near)];
  // Room at both ends, so that a bar that ends here is told from one that runs on.
  const room = Math.max(1, Math.round((last - first) * 0.05));
  return [Math.max(1, first - room), Math.min(9998, last + room)];
}

interface Scale {
  at: (day: string) => number;
  bar: (span: Span) => AxisBar | null;
  beyond: (span: Span) => 'before' | 'after' | null;
}

function scaleOf([first, last]: [number, number]): Scale {
  const day = (text: string) => Date.parse(`${text}T00:00:00Z`);
  const start = day(`${String(first).padStart(4, '0')}-01-01`);
  const end = day(`${String(last + 1).padStart(4, '0')}-01-01`);
  const share = (moment: number) => (moment - start) / (end - start);
  const edges = ({ from, to }: Span) => ({
    left: from === null ? Number.NEGATIVE_INFINITY : share(day(from)),
    right: to === null ? Number.POSITIVE_INFINITY : share(day(to) + dayMs),
  });
  return {
    at: (text) => share(day(text)),
    bar(span) {
      const { left, right } = edges(span);
      if (right <= 0 || left >= 1) return null;
      return { start: Math.max(0, left), end: Math.min(1, right), opensLeft: left < 0, opensRight: right > 1 };
    },
    beyond(span) {
      const { left, right } = edges(span);
      return right <= 0 ? 'before' : left >= 1 ? 'after' : null;
    },
  };
}

/** Whole years, one, two, five or ten (and so on) apart, at most `mostTicks` of them. */
function ticksOf([first, last]: [number, number]): number[] {
  const length = last - first + 1;
  const step = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find((one) => length / one <= mostTicks) ?? 2000;
  const start = Math.ceil(first / step) * step;
  return Array.from({ length: Math.floor((last - start) / step) + 1 }, (_, at) => start + at * step);
}

/**
 * Statements of the same fact, of the same kind and strength, with the same dates, are one row. What follows from a code
 * is the same rule whether the code was seen or quoted: it stands once, as firmly as it can.
 */
function mergeRepeated(dated: readonly Dating[]): Dating[][] {
  const rows = new Map<string, Dating[]>();
  for (const piece of dated) {
    const { kind } = piece.from;
    const strength = kind === 'system' || kind === 'plant' ? null : piece.strength;
    const key = JSON.stringify([piece.basis, kind, strength, piece.spans]);
    rows.set(key, [...(rows.get(key) ?? []), piece]);
  }
  const isHard = ({ strength }: Dating): boolean => strength === 'hard';
  return [...rows.values()].map((pieces) => pieces.toSorted((a, b) => Number(isHard(b)) - Number(isHard(a))));
}

function standOf(pieces: readonly Dating[], sides: readonly Side[], apart: ReadonlySet<string>): AxisRow['stands'] {
  const on = sides.filter((side) => pieces.some(({ id }) => side.evidence.has(id))).length;
  if (on > 0) return on === sides.length ? 'agrees' : 'one-side';
  return pieces.some(({ id }) => apart.has(id)) ? 'apart' : 'alone';
}

function rowOf(pieces: readonly Dating[], scale: Scale, stands: AxisRow['stands']): AxisRow {
  const { spans, strength, source } = pieces[0]!;
  const places = [...new Set(pieces.flatMap((piece) => piece.places))];
  return {
    evidence: pieces.map(({ id }) => id),
    kind: kindOf(pieces[0]!),
    stated: { ...statedOf(pieces[0]!), places },
    about: aboutOf(pieces[0]!),
    strength,
    source,
    bars: spans.flatMap((span) => scale.bar(span) ?? []),
    beyond: [...new Set(spans.flatMap((span) => scale.beyond(span) ?? []))],
    stands,
  };
}

const aboutOf = ({ says }: Dating): AxisRow['about'] =>
  says.kind === 'material' || says.kind === 'other-material' ? says.part : says.kind === 'model' ? 'model' : null;

function kindOf({ id, from, source }: Dating): AxisRow['kind'] {
  if (from.kind === 'reading' && source.kind === 'listing') return 'quoted';
  return from.kind === 'claim' && id === evidenceId.country(from.id) ? 'country' : from.kind;
}
