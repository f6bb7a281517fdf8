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
  /** Files that an export takes, where it takes several, until the buyer has them. */
  const [several, setSeveral] = useState<{ files: number; photos: number } | null>(null);
  const ask = async () => {
    const shared = await act((list) => list.exportFiles());
    if (!shared?.ok) return;
    if (shared.value.files > 1) setSeveral(shared.value);
    else await write(0, 1);
  };
  const write = async (file: number, of: number) => {
    const text = await act((list) => list.exportText(file));
    const number = of > 1 ? `-${file + 1}-of-${of}` : '';
    if (text?.ok) saveAsFile(text.value, `tellstamp-watch-list-${new Date().toISOString().slice(0, 10)}${number}.json`);
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
        {several && <p>{strings.watch.severalFiles(several)}</p>}
        {imported && <ImportedNote imported={imported} />}
      </div>
      {several && <SeveralFiles files={several.files} onSave={write} onDone={() => setSeveral(null)} />}
    </>
  );
}

/** A button for each file: browsers hold back all but the first of what one press would save. */
function SeveralFiles({
  files,
  onSave,
  onDone,
}: {
  files: number;
  onSave: (file: number, of: number) => Promise<void>;
  onDone: () => void;
}) {
  return (
    <div class="export-files">
      {Array.from({ length: files }, (_, file) => (
        <button key={file} type="button" onClick={() => onSave(file, files)}>
          {strings.watch.saveFile(file + 1, files)}
        </button>
      ))}
      <button type="button" onClick={onDone}>
        {strings.watch.allFilesSaved}
      </button>
    </div>
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
