import { presentPlaces } from '../place';
import type { Span } from '../span';
import type { Dating } from './types';

/**
 * Time and ground cut into cells that every piece of evidence either allows as a whole or not at all, so that
 * questions on sets of evidence become questions on bits. Exact: the cells are cut at every end of every span, and
 * a place is the set of present countries that it stands for.
 */
export interface Cells {
  /** Number of cells; at least 1. */
  count: number;
  /** For each piece, in order, the cells that it allows: bit n is cell n. */
  allowed: bigint[];
}

const dayMs = 86_400_000;
const dayNumber = (day: string) => Date.parse(`${day}T00:00:00Z`) / dayMs;
const starts = (span: Span) => (span.from === null ? Number.NEGATIVE_INFINITY : dayNumber(span.from));
/** First day after the span. */
const ends = (span: Span) => (span.to === null ? Number.POSITIVE_INFINITY : dayNumber(span.to) + 1);

export const everyCell = (count: number): bigint => (1n << BigInt(count)) - 1n;

/** Cells of time. Dating that says nothing of date allows them all. */
export function dateCells(evidence: readonly Pick<Dating, 'spans'>[]): Cells {
  const cuts = new Set<number>([Number.NEGATIVE_INFINITY]);
  for (const { spans } of evidence) {
    for (const span of spans) cuts.add(starts(span)).add(ends(span));
  }
  cuts.delete(Number.POSITIVE_INFINITY);
  const edges = [...cuts].sort((a, b) => a - b);
  const at = new Map(edges.map((edge, index) => [edge, BigInt(index)]));
  const before = (edge: number) => (1n << (at.get(edge) ?? BigInt(edges.length))) - 1n;
  const allowed = evidence.map(({ spans }) =>
    spans.length === 0
      ? everyCell(edges.length)
      : spans.reduce((bits, span) => bits | (before(ends(span)) & ~before(starts(span))), 0n),
  );
  return { count: edges.length, allowed };
}

/** The present countries that a code stands for; a code that the table does not know stands for itself. */
export const groundOf = (place: string): string[] => {
  const present = presentPlaces(place);
  return present.length > 0 ? present : [place];
};

/** Cells of ground: one for each present country that is named, and one for everywhere else. */
export function placeCells(evidence: readonly Pick<Dating, 'places'>[]): Cells {
  const named = [...new Set(evidence.flatMap(({ places }) => places.flatMap(groundOf)))];
  const at = new Map(named.map((place, index) => [place, 1n << BigInt(index)]));
  const count = named.length + 1;
  const allowed = evidence.map(({ places }) =>
    places.length === 0
      ? everyCell(count)
      : places.flatMap(groundOf).reduce((bits, place) => bits | (at.get(place) ?? 0n), 0n),
  );
  return { count, allowed };
}

/** For each cell, the pieces that allow it: bit n is piece n. */
export function piecesByCell({ count, allowed }: Cells): bigint[] {
  return Array.from({ length: count }, (_, cell) =>
    allowed.reduce(
      (pieces, bits, piece) => ((bits >> BigInt(cell)) & 1n ? pieces | (1n << BigInt(piece)) : pieces),
      0n,
    ),
  );
}
