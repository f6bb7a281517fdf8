import { partialDateSpan } from '../../span';
import { strings } from '../strings';
import type { Editing } from './editing';

interface Row {
  words: string;
  from: number;
  to: number | null;
  soft: boolean;
}

/** The facts of construction as bars over the years, so that a gap or an overlap is seen while it is written. */
export function ConstructionAxis({ edit }: { edit: Editing }) {
  const rows = edit.list(['construction']).flatMap(rowOf);
  if (rows.length === 0) return null;
  const first = Math.min(...rows.map(({ from }) => from));
  const last = Math.max(...rows.map(({ from, to }) => to ?? from), first + 10) + 2;
  const share = (year: number) => `${(((year - first) / (last - first)) * 100).toFixed(2)}%`;
  return (
    <ul class="construction-axis">
      {rows.map(({ words, from, to, soft }) => (
        <li key={`${words}${from}`}>
          {words} {from}–{to ?? strings.makers.period.to}
          <svg aria-hidden="true" width="100%" height="8">
            <rect
              class={soft ? 'soft' : 'hard'}
              x={share(from)}
              y="1"
              width={`${((((to ?? last) - from) / (last - first)) * 100).toFixed(2)}%`}
              height="6"
            />
          </svg>
        </li>
      ))}
    </ul>
  );
}

/** A fact with dates that can be read; one that is half written has no bar yet. */
function rowOf(fact: unknown): Row[] {
  const { part, is, used, strength } = (fact ?? {}) as {
    part?: unknown;
    is?: unknown;
    used?: unknown;
    strength?: unknown;
  };
  if (!Array.isArray(used) || typeof used[0] !== 'string') return [];
  const from = partialDateSpan(used[0])?.from;
  const to = typeof used[1] === 'string' ? partialDateSpan(used[1])?.to : null;
  if (!from || to === undefined) return [];
  const year = (day: string) => Number(day.slice(0, 4));
  return [
    { words: `${part}: ${is}`, from: year(from), to: to === null ? null : year(to) + 1, soft: strength === 'soft' },
  ];
}
