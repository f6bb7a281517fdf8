import { useRef, useState } from 'preact/hooks';
import {
  builtInMakers,
  type Draft,
  draftOf,
  exportText,
  inspectDraft,
  type MakerFile,
  newDraft,
  openText,
  plainName,
} from '../../maker';
import type { Problem } from '../../problem';
import type { OwnMakerFile } from '../../store/maker-files';
import { strings } from '../../words';
import { ProblemNote } from '../parts/ProblemNote';
import { saveAsFile } from '../save-as-file';
import { useFocusKept } from '../use-focus-kept';
import { Editor } from './Editor';
import { MergeFiles } from './MergeFiles';
import { TakeFromPage } from './take/TakeFromPage';
import { useOwnMakers } from './use-own-makers';

const words = strings.makers;
const nameOf = ({ value }: Draft) =>
  typeof value.maker === 'string' && value.maker !== '' ? value.maker : words.unnamed;
const newId = () => crypto.randomUUID();

interface Props {
  openFile: string | null;
  /** A known code for the file that is open, from the listing that it was begun from. */
  known: string | null;
  take: string | null;
}

/** Maker files: the built-in ones, the user's own, and the editor of the one that is open. */
export function MakersSection({ openFile, known, take: taking }: Props) {
  const { files, write, remove } = useOwnMakers();
  const [problems, setProblems] = useState<Problem[]>([]);
  const [removed, setRemoved] = useState<OwnMakerFile | null>(null);
  // One after the other: several files that are dropped at once may each belong to a file that is here.
  const [toMerge, setToMerge] = useState<{ ownId: string; theirs: MakerFile }[]>([]);
  const chooser = useRef<HTMLInputElement>(null);
  // The way back from a deletion first, then the file that was put back, or what can be done without one.
  const room = useFocusKept<HTMLElement>('.toast button', '.watch-row button');
  if (files === null) return null;
  const open = files.find(({ id }) => id === openFile);
  const show = (id: string | null) => {
    location.hash = id === null ? 'makers' : `makers&file=${id}`;
  };
  const begin = (draft: Draft) => {
    const id = newId();
    write(id, draft);
    show(id);
  };
  const take = async (chosen: Iterable<File>) => {
    const [faults, pairs]: [Problem[], typeof toMerge] = [[], []];
    for (const file of chosen) {
      const { draft, problems: found } = openText(await file.text());
      faults.push(
        ...found.slice(0, 5).map((problem) => ({ ...problem, where: `${file.name}, ${words.place(problem.where)}` })),
      );
      if (!draft) continue;
      const theirs = inspectDraft(draft).file;
      const own = theirs && files.find((one) => plainName(nameOf(one.draft)) === plainName(theirs.maker));
      if (own && theirs && inspectDraft(own.draft).file) pairs.push({ ownId: own.id, theirs });
      else begin(draft);
    }
    setProblems(faults);
    setToMerge((waiting) => [...waiting, ...pairs]);
  };
  const next = toMerge[0];
  const own = next && files.find(({ id }) => id === next.ownId);
  const mine = own ? inspectDraft(own.draft).file : null;
  const nextMerge = () => setToMerge((waiting) => waiting.slice(1));
  return (
    <section
      ref={room}
      aria-label={words.title}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        take(event.dataTransfer?.files ?? []);
      }}
    >
      <div role="alert">
        {problems.map((problem) => (
          <ProblemNote key={problem.where + problem.what} problem={problem} named />
        ))}
      </div>
      {next && own && mine && (
        <MergeFiles
          key={toMerge.length}
          mine={mine}
          theirs={next.theirs}
          onMerged={(merged) => {
            write(own.id, joinedDraft(own.draft, merged));
            nextMerge();
            show(own.id);
          }}
          onApart={() => {
            begin(draftOf(next.theirs));
            nextMerge();
          }}
        />
      )}
      {taking !== null ? (
        <TakeFromPage
          id={taking}
          own={files}
          begin={begin}
          onAdded={(id, draft) => {
            write(id, draft);
            show(id);
          }}
        />
      ) : open ? (
        <>
          <div class="row watch-actions">
            <button type="button" onClick={() => show(null)}>
              {words.done}
            </button>
            <button type="button" onClick={() => saveDraft(open.draft)}>
              {words.exportFile}
            </button>
          </div>
          <h2>{nameOf(open.draft)}</h2>
          <Editor fileId={open.id} known={known ?? ''} draft={open.draft} onChange={(draft) => write(open.id, draft)} />
        </>
      ) : (
        <>
          <p class="about">{words.about}</p>
          <div class="row watch-actions">
            <button type="button" class="main" onClick={() => begin(newDraft())}>
              {words.create}
            </button>
            <button type="button" onClick={() => chooser.current?.click()}>
              {words.choose}
            </button>
            <a href="#makers&take">{strings.take.way}</a>
            <span class="muted">{words.drop}</span>
            <input
              ref={chooser}
              type="file"
              multiple
              accept=".json,application/json"
              class="visually-hidden"
              tabIndex={-1}
              aria-label={words.choose}
              onChange={({ currentTarget }) => {
                take([...(currentTarget.files ?? [])]);
                currentTarget.value = '';
              }}
            />
          </div>
          <h2>{words.own}</h2>
          {files.length === 0 && <p class="muted">{words.none}</p>}
          {files.map((file) => (
            <OwnRow
              key={file.id}
              file={file}
              onEdit={() => show(file.id)}
              onRemove={async () => {
                // Together with the row's end, so that the focus finds the way back.
                setRemoved(file);
                await remove(file.id);
              }}
            />
          ))}
          <h2>{words.builtIn}</h2>
          {builtInMakers.map((maker) => (
            <article class="watch-row" key={maker.maker}>
              <h3>{maker.maker}</h3>
              <p class="muted">{countsOf(maker)}</p>
              <button type="button" class="small" onClick={() => begin(draftOf(maker))}>
                {words.copy}
              </button>
            </article>
          ))}
        </>
      )}
      <div role="status">
        {removed && (
          <div class="toast">
            <p>{words.removed(nameOf(removed.draft))}</p>
            <button
              type="button"
              onClick={() => {
                write(removed.id, removed.draft);
                setRemoved(null);
              }}
            >
              {words.undo}
            </button>
          </div>
        )}
      </div>
    </section>
  );
}

/** The joined file as one step of the file that was here, so that it can be taken back. */
const joinedDraft = (own: Draft, merged: MakerFile): Draft => ({
  ...draftOf(merged),
  past: [...own.past, { value: own.value, what: words.steps.join }],
});

const countsOf = ({ codeSystems, plants, models }: MakerFile) =>
  words.counts(codeSystems.length, plants.length, models.length);

const saveDraft = (draft: Draft) =>
  saveAsFile(exportText(draft), `${plainName(nameOf(draft)).replaceAll(' ', '-') || 'maker'}.json`);

function OwnRow({ file, onEdit, onRemove }: { file: OwnMakerFile; onEdit: () => void; onRemove: () => void }) {
  const { file: finished, problems } = inspectDraft(file.draft);
  return (
    <article class="watch-row">
      <h3>{nameOf(file.draft)}</h3>
      <p class="muted">{finished ? `${countsOf(finished)}. ${words.finished}` : words.unfinished(problems.length)}</p>
      <div class="row">
        <button type="button" onClick={onEdit}>
          {words.edit}
        </button>
        <button type="button" onClick={() => saveDraft(file.draft)}>
          {words.exportFile}
        </button>
        <button type="button" onClick={onRemove}>
          {words.removeFile}
        </button>
      </div>
    </article>
  );
}
