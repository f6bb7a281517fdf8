import { useCallback, useState } from 'preact/hooks';
import type { ReadableRow, WatchRow, WatchStatus } from '../../watch';
import { strings } from '../../words';
import { CaseRow } from './CaseRow';
import { LongList } from './LongList';
import { Transfer } from './Transfer';
import { UnreadableRow } from './UnreadableRow';
import type { WatchState } from './use-watch-list';

interface Props {
  rows: WatchRow[];
  /** Whether something else is to be said of an empty list. */
  lost: boolean;
  act: WatchState['act'];
  look: WatchState['look'];
  /** The row that gets the focus. */
  focusOn: { id: string } | null;
  /** `next` is the row that takes the place of the removed one. */
  onRemove: (row: ReadableRow, next: string | null) => void;
  onRestore: (id: string) => void;
}

/** The saved cases: found by words of their title or address, filtered by status; deleted ones in a bin below. */
export function CaseList({ rows, lost, act, look, focusOn, onRemove, onRestore }: Props) {
  const [shown, setShown] = useState<WatchStatus | 'all'>('all');
  const [sought, setSought] = useState('');
  const present = rows.filter((row) => row.state !== 'readable' || row.removedAt === null);
  const bin = rows.flatMap((row) => (row.state === 'readable' && row.removedAt !== null ? [row] : []));
  const listed = present.filter(
    (row) =>
      (shown === 'all' || row.state !== 'readable' || row.status === shown) && (sought === '' || holds(row, sought)),
  );
  const readFace = useCallback(
    async (id: string) => {
      const face = await look((list) => list.face(id));
      return face?.ok ? face.value : null;
    },
    [look],
  );
  const draw = (row: WatchRow) =>
    row.state === 'readable' ? (
      <CaseRow
        row={row}
        readFace={readFace}
        onStatus={(status) => act((list) => list.setStatus(row.id, status))}
        onRemove={() => onRemove(row, neighbour(listed, row.id))}
      />
    ) : (
      <UnreadableRow row={row} />
    );
  return (
    <>
      <div class="watch-actions">
        {present.length > 0 && (
          <>
            <label class="row spread">
              <span>{strings.watch.find}</span>
              <input type="search" value={sought} onInput={(event) => setSought(event.currentTarget.value)} />
            </label>
            <StatusFilter shown={shown} onShow={setShown} />
          </>
        )}
        <Transfer act={act} />
      </div>
      {present.length === 0 && !lost && (
        <p>
          {strings.watch.empty} <a href="#demo">{strings.start.openDemo}</a>
        </p>
      )}
      {present.length > 0 && (
        <p role="status" class="muted">
          {listed.length === present.length
            ? strings.watch.counted(present.length)
            : strings.watch.countedOf(listed.length, present.length)}
        </p>
      )}
      {present.length > 0 && <LongList items={listed} label={strings.watch.title} draw={draw} focusOn={focusOn} />}
      {bin.length > 0 && <Bin rows={bin} onRestore={onRestore} />}
    </>
  );
}

/** Whether a row has all the words in its title or address. */
function holds(row: WatchRow, sought: string): boolean {
  const text = `${row.title} ${row.state === 'readable' ? row.address : ''}`.toLocaleLowerCase();
  return sought
    .toLocaleLowerCase()
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** The row that takes the place of one that goes: the next one, or the one before the last. */
export function neighbour(rows: WatchRow[], id: string): string | null {
  const at = rows.findIndex((row) => row.id === id);
  return (rows[at + 1] ?? rows[at - 1])?.id ?? null;
}

/** Deleted cases are drawn when the bin is opened: there may be as many as in the list. */
function Bin({ rows, onRestore }: { rows: ReadableRow[]; onRestore: (id: string) => void }) {
  const [open, setOpen] = useState(false);
  return (
    <details class="quiet" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {strings.watch.bin} ({rows.length})
      </summary>
      {open && (
        <ul>
          {rows.map(({ id, title }) => (
            <li key={id}>
              {title}{' '}
              <button type="button" class="small" onClick={() => onRestore(id)}>
                {strings.watch.restore}
                <span class="visually-hidden"> {title}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
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
