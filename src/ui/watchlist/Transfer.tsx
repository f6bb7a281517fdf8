import { useState } from 'preact/hooks';
import type { Imported } from '../../watch';
import { strings } from '../../words';
import { FileChooser } from '../parts/FileChooser';
import { saidProblem } from '../parts/ProblemNote';
import { saveAsFile } from '../save-as-file';
import type { WatchState } from './use-watch-list';

/** Export and import of the whole list, with what came of it. */
export function Transfer({ act }: { act: WatchState['act'] }) {
  const [imported, setImported] = useState<Imported | null>(null);
  /** Photos that a file has no room for, until the buyer takes it without them. */
  const [leftOut, setLeftOut] = useState(0);
  const ask = async () => {
    const count = await act((list) => list.exportLeavesOut());
    if (!count?.ok) return;
    if (count.value > 0) setLeftOut(count.value);
    else await write();
  };
  const write = async () => {
    setLeftOut(0);
    const text = await act((list) => list.exportText());
    if (text?.ok) saveAsFile(text.value, `tellstamp-watch-list-${new Date().toISOString().slice(0, 10)}.json`);
  };
  const read = async (file: File | undefined) => {
    if (!file) return;
    const text = await file.text();
    const result = await act((list) => list.importText(text));
    // A refusal is said by the list itself, like that of any other action.
    setImported(result?.ok ? result.value : null);
  };
  return (
    <>
      <button type="button" onClick={ask}>
        {strings.watch.exportAll}
      </button>
      <FileChooser label={strings.watch.importFile} accept=".json,application/json" onFiles={([file]) => read(file)} />
      <div role="status" class="import-outcome">
        {leftOut > 0 && (
          <>
            <p>{strings.watch.leavesOut(leftOut)}</p>
            <button type="button" onClick={write}>
              {strings.watch.exportWithout}
            </button>
          </>
        )}
        {imported && <ImportedNote imported={imported} />}
      </div>
    </>
  );
}

function ImportedNote({ imported }: { imported: Imported }) {
  const { refused } = imported;
  return (
    <>
      {strings.watch.imported(imported).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {refused.length > 0 && (
        <>
          <p>{strings.watch.refused(refused.length)}</p>
          <ul>
            {refused
              .slice(0, 10)
              .map(saidProblem)
              .map(({ where, what }) => (
                <li key={where}>{strings.watch.refusedRecord(where, what)}</li>
              ))}
          </ul>
        </>
      )}
    </>
  );
}
