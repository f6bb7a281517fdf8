import { useEffect, useState } from 'preact/hooks';
import { strings } from '../../words';
import { Notice } from '../parts/Notice';
import { ProblemNote } from '../parts/ProblemNote';
import { useFocusWhen } from '../use-focus-when';
import { CaseList, neighbour } from './CaseList';
import { CasePage } from './CasePage';
import { useWatchList } from './use-watch-list';

interface Removed {
  id: string;
  title: string;
  /** Whether the list has a row that takes the focus; otherwise the way back does. */
  hasNext: boolean;
}

/** The watch list, or in its place the one case that the address names; the way back leads to the case's row. */
export function WatchSection({ openCase, row }: { openCase: string | null; row: string | null }) {
  const { rows, loss, problem, act, look, takeNoteOfLoss } = useWatchList();
  const [removed, setRemoved] = useState<Removed | null>(null);
  const [focusOn, setFocusOn] = useState<{ id: string } | null>(null);
  useEffect(() => setFocusOn(row === null ? null : { id: row }), [row]);
  if (rows === null) return problem && <ProblemNote problem={problem} />;

  const remove = async ({ id, title }: { id: string; title: string }, next: string | null) => {
    const done = await act((list) => list.remove(id));
    if (!done?.ok) return false;
    setRemoved({ id, title, hasNext: next !== null });
    setFocusOn(next === null ? null : { id: next });
    return true;
  };
  const restore = async (id: string) => {
    const done = await act((list) => list.restore(id));
    setRemoved(null);
    if (done?.ok) setFocusOn({ id: done.value.id });
  };
  const present = rows.filter((one) => one.state !== 'readable' || one.removedAt === null);
  return (
    <section aria-label={strings.watch.title}>
      {loss && (
        <Notice text={strings.watch.lost(loss)} strong>
          <button type="button" onClick={takeNoteOfLoss}>
            {strings.watch.understood}
          </button>
        </Notice>
      )}
      <div role="alert">{problem && <ProblemNote problem={problem} />}</div>
      {openCase === null ? (
        <CaseList
          rows={rows}
          lost={loss !== null}
          act={act}
          look={look}
          focusOn={focusOn}
          onRemove={remove}
          onRestore={restore}
        />
      ) : (
        <CasePage
          key={openCase}
          id={openCase}
          row={rows.find(({ id }) => id === openCase) ?? null}
          act={act}
          look={look}
          onRemove={async (record) => {
            const next = neighbour(present, record.id);
            if (await remove(record, next)) location.hash = next === null ? '#watch' : rowAddress(next);
          }}
        />
      )}
      <div role="status">
        {removed && (
          <Undo
            removed={removed}
            onUndo={() => restore(removed.id)}
            onClose={() => setRemoved(null)}
            key={removed.id}
          />
        )}
      </div>
    </section>
  );
}

/** The address of a row in the list. */
export const rowAddress = (id: string): string => `#watch&row=${encodeURIComponent(id)}`;

function Undo({ removed, onUndo, onClose }: { removed: Removed; onUndo: () => void; onClose: () => void }) {
  const undo = useFocusWhen<HTMLButtonElement>(!removed.hasNext);
  return (
    <div class="toast">
      <p>{strings.watch.removed(removed.title)}</p>
      <button type="button" ref={undo} onClick={onUndo}>
        {strings.watch.undo}
      </button>
      <button type="button" onClick={onClose}>
        {strings.watch.close}
      </button>
    </div>
  );
}
