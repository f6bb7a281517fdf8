import { type Dated, hasOwnFrame, type Work } from './dated';
import type { Fact } from './facts';

export interface EraPair {
  early: Dated;
  late: Dated;
  /** Whether the code in this place of the order of time is of the era. */
  isEarly: (order: number) => boolean;
  isLate: (order: number) => boolean;
}

interface Limits {
  least: number;
  wrong: number;
  most: number;
  work: Work;
}

/** Ways to write the date that are kept for each side of a border. */
const mostSides = 12;

interface Side {
  one: Dated;
  score: number;
  missed: number;
}

/**
 * Pairs of layouts of which one explains the earlier codes and the other the later ones, best first. A code whose date
 * is too vague to stand before or behind the border may be of either.
 */
export function* pairsOfEras(
  dated: readonly Dated[],
  facts: readonly Fact[],
  { least, wrong, most, work }: Limits,
): Generator<Work, EraPair[]> {
  const ordered = [...facts].sort((a, b) => a.order - b.order);
  const pairs: (EraPair & { score: number })[] = [];
  for (let border = least; border <= ordered.length - least; border++) {
    // Codes of one time are not parted: nothing would say which is the earlier.
    if (ordered[border]!.middle === ordered[border - 1]!.middle) continue;
    const isTight = (order: number) => !ordered[order]!.loose;
    const early = bestOf(dated, { from: 0, to: border, isTight, least, wrong });
    const late = bestOf(dated, { from: border, to: ordered.length, isTight, least, wrong });
    work.steps += dated.length * ordered.length;
    yield work;
    for (const a of early) {
      for (const b of late) {
        if (a.one === b.one || a.missed + b.missed > wrong) continue;
        const pair = pairAt(a.one, b.one, ordered, border);
        if (pair.missed <= wrong) pairs.push(pair);
      }
    }
  }
  return pairs.sort((a, b) => b.score - a.score).slice(0, most);
}

interface Reach {
  from: number;
  to: number;
  isTight: (order: number) => boolean;
  least: number;
  wrong: number;
}

function bestOf(dated: readonly Dated[], { from, to, isTight, least, wrong }: Reach): Side[] {
  const sides: Side[] = [];
  for (const one of dated) {
    let [score, missed, agreed] = [-one.cost, 0, 0];
    for (let order = from; order < to; order++) {
      const bits = one.bits[order];
      if (bits !== null) {
        score += bits!;
        agreed++;
      } else if (isTight(order)) missed++;
    }
    const inSide = (order: number) => order >= from && order < to;
    if (missed <= wrong && agreed >= least && hasOwnFrame(one, inSide))
      sides.push({ one, score: score - missed * 8, missed });
  }
  return sides.sort((a, b) => b.score - a.score).slice(0, mostSides);
}

function pairAt(early: Dated, late: Dated, ordered: readonly Fact[], border: number) {
  const ofEarly = new Set<number>();
  const ofLate = new Set<number>();
  let [score, missed] = [-early.cost - late.cost, 0];
  for (const { order, loose } of ordered) {
    const before = early.bits[order] ?? null;
    const behind = late.bits[order] ?? null;
    const mayBeEarly = before !== null && (loose || order < border);
    const mayBeLate = behind !== null && (loose || order >= border);
    const isEarly = mayBeEarly && (!mayBeLate || order < border);
    if (isEarly) ofEarly.add(order);
    else if (mayBeLate) ofLate.add(order);
    else missed++;
    score += (isEarly ? before : mayBeLate ? behind : 0) ?? 0;
  }
  return {
    early,
    late,
    isEarly: (order: number) => ofEarly.has(order),
    isLate: (order: number) => ofLate.has(order),
    score: score - missed * 8,
    missed,
  };
}
