import { periodSpan } from '../../span';

/** One fact of construction on the axis; `end` is the first year after it, null when it is still so. */
export interface AxisFact {
  /** Its place in the file's list, counted from 0. */
  at: number;
  part: string;
  is: string;
  from: number;
  end: number | null;
  soft: boolean;
}

/** The years that the axis spans, and those that carry a mark. */
export interface AxisYears {
  first: number;
  last: number;
  ticks: number[];
}

const mostTicks = 5;

/** Facts with dates that can be read, by part and then by date; one that is half written has no bar yet. */
export function axisFacts(facts: readonly unknown[]): AxisFact[] {
  const year = (day: string) => Number(day.slice(0, 4));
  const read = facts.flatMap((fact, at): AxisFact[] => {
    const { part, is, used, strength } = (fact ?? {}) as Record<string, unknown>;
    if (!Array.isArray(used) || typeof used[0] !== 'string') return [];
    const span = periodSpan([used[0], typeof used[1] === 'string' ? used[1] : null]);
    if (!span?.from || (span.to !== null && span.to < span.from)) return [];
    const { from, to } = span;
    const end = to === null ? null : year(to) + 1;
    return [{ at, part: String(part ?? ''), is: String(is ?? ''), from: year(from), end, soft: strength !== 'hard' }];
  });
  const order = [...new Set(read.map(({ part }) => part))];
  return read.sort((a, b) => order.indexOf(a.part) - order.indexOf(b.part) || a.from - b.from || a.at - b.at);
}

/** The span of the axis over these facts, with at most five marked years a round number of years apart. */
export function axisYears(facts: readonly AxisFact[]): AxisYears {
  const first = Math.min(...facts.map(({ from }) => from));
  const last = Math.max(...facts.map(({ from, end }) => end ?? from), first + 10) + 2;
  const step = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000].find((years) => (last - first) / years <= mostTicks) ?? 2000;
  const ticks: number[] = [];
  for (let year = Math.ceil(first / step) * step; year < last; year += step) ticks.push(year);
  return { first, last, ticks };
}
