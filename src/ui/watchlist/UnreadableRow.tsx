import type { WatchRow } from '../../watch';
import { strings } from '../../words';
import { ProblemNote } from '../parts/ProblemNote';

/** A record that this version cannot read: shown as it lies in the database, never changed. */
export function UnreadableRow({ row }: { row: Exclude<WatchRow, { state: 'readable' }> }) {
  const title = row.title || strings.watch.untitled;
  return (
    <article class="case-row unreadable" aria-label={title}>
      <div class="case-words">
        <h2 tabIndex={-1} data-row-target>
          {title}
        </h2>
        <p>{row.state === 'newer' ? strings.watch.newer : strings.watch.damaged}</p>
        <ProblemNote problem={row.problem} />
      </div>
    </article>
  );
}
