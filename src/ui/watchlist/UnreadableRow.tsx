import type { WatchRow } from '../../watch';
import { ProblemNote } from '../parts/ProblemNote';
import { strings } from '../strings';

/** A record that this version cannot read: shown as it lies in the database, never changed. */
export const UnreadableRow = ({ row }: { row: Exclude<WatchRow, { state: 'readable' }> }) => (
  <article class="watch-row">
    <h2>{row.title}</h2>
    <p>{row.state === 'newer' ? strings.watch.newer : strings.watch.damaged}</p>
    <ProblemNote problem={row.problem} />
  </article>
);
