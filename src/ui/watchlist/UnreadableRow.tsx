import type { WatchRow } from '../../watch';
import { strings } from '../../words';
import { ProblemNote } from '../parts/ProblemNote';

/** A record that this version cannot read: shown as it lies in the database, never changed. */
export const UnreadableRow = ({ row }: { row: Exclude<WatchRow, { state: 'readable' }> }) => (
  <article class="watch-row">
    <h2>{row.title}</h2>
    <p>{row.state === 'newer' ? strings.watch.newer : strings.watch.damaged}</p>
    <ProblemNote problem={row.problem} />
  </article>
);
