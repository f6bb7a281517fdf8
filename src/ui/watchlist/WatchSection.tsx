import { useState } from 'preact/hooks';
import type { WatchRecord, WatchRow, WatchStatus } from '../../watch';
import { strings } from '../../words';
import { Notice } from '../parts/Notice';
import { ProblemNote } from '../parts/ProblemNote';
import { Transfer } from './Transfer';
import { UnreadableRow } from './UnreadableRow';
import { useWatchList } from './use-watch-list';
import { WatchRowCard } from './WatchRowCard';

/** The list of saved cases: newest change first, filtered by status, deleted ones in a bin below. */
export function WatchSection({ openCase }: { openCase: string | null }) {
  const { rows, wiped, problem, act, acceptWipe } = useWatchList();
  const [shown, setShown] = useState<WatchStatus | 'all'>('all');
  const [removed, setRemoved] = useState<WatchRecord | null>(null);
  if (rows === null) return problem && <ProblemNote problem={problem} />;
  const present = rows.filter((row) => row.state !== 'readable' || row.record.removedAt === null);
  const bin = rows.flatMap((row) => (row.state === 'readable' && row.record.removedAt !== null ? [row.record] : []));
  const listed = present.filter((row) => shown === 'all' || row.state !== 'readable' || row.record.status === shown);

  const remove = async (record: WatchRecord) => {
    const done = await act((list) => list.remove(record.id));
    if (done?.ok) setRemoved(record);
  };
  const restore = async (id: string) => {
    await act((list) => list.restore(id));
    setRemoved(null);
  };
  return (
    <section aria-label={strings.watch.title}>
      {wiped && (
        <Notice text={strings.watch.wiped} strong>
          <button type="button" onClick={acceptWipe}>
            {strings.watch.understood}
          </button>
        </Notice>
      )}
      <div role="alert">{problem && <ProblemNote problem={problem} />}</div>
      <div class="watch-actions">
        <p class="spread muted">{strings.watch.counted(present.length)}</p>
        {present.length > 0 && <StatusFilter shown={shown} onShow={setShown} />}
        <Transfer act={act} />
      </div>
      {present.length === 0 && !wiped && <p>{strings.watch.empty}</p>}
      {listed.map((row) => (
        <Row key={rowId(row)} row={row} open={rowId(row) === openCase} act={act} onRemove={remove} />
      ))}
      {bin.length > 0 && (
        <details class="quiet">
          <summary>
            {strings.watch.bin} ({bin.length})
          </summary>
          <ul>
            {bin.map(({ id, title }) => (
              <li key={id}>
                {title}{' '}
                <button type="button" class="small" onClick={() => restore(id)}>
                  {strings.watch.restore}
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <div role="status">
        {removed && (
          <div class="toast">
            <p>{strings.watch.removed(removed.title)}</p>
            <button type="button" onClick={() => restore(removed.id)}>
              {strings.watch.undo}
            </button>
            <button type="button" onClick={() => setRemoved(null)}>
              {strings.watch.close}
            </button>
          </div>
        )}
      </div>
    </section>
  );
}

const rowId = (row: WatchRow) => (row.state === 'readable' ? row.record.id : row.id);

interface RowProps {
  row: WatchRow;
  open: boolean;
  act: ReturnType<typeof useWatchList>['act'];
  onRemove: (record: WatchRecord) => void;
}

function Row({ row, open, act, onRemove }: RowProps) {
  if (row.state !== 'readable') return <UnreadableRow row={row} />;
  const { record } = row;
  return (
    <WatchRowCard
      record={record}
      startOpen={open}
      onStatus={(status) => act((list) => list.setStatus(record.id, status))}
      onNote={async (note) => (await act((list) => list.setNote(record.id, note)))?.ok ?? false}
      onRemove={() => onRemove(record)}
    />
  );
}

function StatusFilter({
  shown,
  onShow,
}: {
  shown: WatchStatus | 'all';
  onShow: (status: WatchStatus | 'all') => void;
}) {
  return (
    <label class="row">
      <span>{strings.watch.filter}</span>
      <select value={shown} onChange={(event) => onShow(event.currentTarget.value as WatchStatus | 'all')}>
        <option value="all">{strings.watch.all}</option>
        {Object.entries(strings.watch.statuses).map(([status, words]) => (
          <option key={status} value={status}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}
