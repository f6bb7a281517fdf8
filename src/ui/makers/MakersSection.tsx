import { useEffect, useState } from 'preact/hooks';
import { builtInMakers, type Draft, draftOf, inspectDraft, type MakerFile, newDraft } from '../../maker';
import { takeBrought } from '../../store/brought';
import { type FileOrigin, removeOrigin, writeOrigin } from '../../store/file-origins';
import type { OwnMakerFile } from '../../store/maker-files';
import { strings } from '../../words';
import { FileChooser } from '../parts/FileChooser';
import { ProblemNote, saidProblem } from '../parts/ProblemNote';
import { useFocusKept } from '../use-focus-kept';
import { countsOf } from './counts';
import { Editor } from './Editor';
import { MergeFiles } from './MergeFiles';
import { nameOf, OwnRow, saveDraft } from './OwnRow';
import { TakeFromPage } from './take/TakeFromPage';
import { BringFile } from './travel/BringFile';
import { Origin } from './travel/Origin';
import { useBrought } from './travel/use-brought';
import { useOrigins } from './travel/use-origins';
import { usePasted } from './travel/use-pasted';
import { useOwnMakers } from './use-own-makers';

const words = strings.makers;
const newId = () => crypto.randomUUID();

interface Props {
  openFile: string | null;
  /** A known code for the file that is open, from the listing that it was begun from. */
  known: string | null;
  take: string | null;
  /** The maker of the listing that a page is brought for. */
  takeFor: string | null;
  /** Files that were dropped on the panel, by their id. */
  bring: string | null;
}

/** Maker files: the built-in ones, the user's own, and the editor of the one that is open. */
export function MakersSection({ openFile, known, take: taking, takeFor, bring }: Props) {
  const { files, write, remove } = useOwnMakers();
  const origins = useOrigins();
  const [removed, setRemoved] = useState<{ file: OwnMakerFile; origin: FileOrigin | undefined } | null>(null);
  // The way back from a deletion first, then the file that was put back, or what can be done without one.
  const room = useFocusKept<HTMLElement>('.toast button', '.watch-row button');
  const show = (id: string | null) => {
    location.hash = id === null ? 'makers' : `makers&file=${id}`;
  };
  const begin = (draft: Draft): string => {
    const id = newId();
    write(id, draft);
    show(id);
    return id;
  };
  const brought = useBrought({ files: files ?? [], origins, begin, show });
  usePasted(brought);
  const { takeTexts } = brought;
  const isReady = files !== null;
  // Once, joined with the files that are there then.
  useEffect(() => {
    if (bring !== null && isReady) takeBrought(bring).then(takeTexts);
  }, [bring, isReady]);
  if (files === null) return null;
  const open = files.find(({ id }) => id === openFile);
  const origin = open && origins.get(open.id);
  const { next } = brought;
  const own = next && files.find(({ id }) => id === next.ownId);
  const mine = own ? inspectDraft(own.draft).file : null;
  return (
    <section
      ref={room}
      aria-label={words.title}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        const text = event.dataTransfer?.getData('text/plain') ?? '';
        if (text.trim() === '') brought.takeFiles(event.dataTransfer?.files ?? []);
        else brought.takeText(text);
      }}
    >
      <div role="alert">
        {brought.problems.map((problem) => (
          <ProblemNote key={problem.where + saidProblem(problem).what} problem={problem} named />
        ))}
      </div>
      {next && own && mine && (
        <MergeFiles
          key={brought.left}
          mine={mine}
          theirs={next.theirs}
          onMerged={(merged) => {
            write(own.id, joinedDraft(own.draft, merged));
            if (next.origin) writeOrigin(own.id, next.origin);
            brought.done();
            show(own.id);
          }}
          onApart={() => {
            const id = begin(draftOf(next.theirs));
            if (next.origin) writeOrigin(id, next.origin);
            brought.done();
          }}
        />
      )}
      {taking !== null ? (
        <TakeFromPage
          id={taking}
          known={takeFor ?? ''}
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
          {origin && (
            <Origin id={open.id} origin={origin} draft={open.draft} onChange={(draft) => write(open.id, draft)} />
          )}
          <Editor fileId={open.id} known={known ?? ''} draft={open.draft} onChange={(draft) => write(open.id, draft)} />
        </>
      ) : (
        <>
          <p class="about">{words.about}</p>
          <div class="row watch-actions">
            <button type="button" class="main" onClick={() => begin(newDraft())}>
              {words.create}
            </button>
            <FileChooser label={words.choose} accept=".json,application/json" multiple onFiles={brought.takeFiles} />
            <a href="#makers&take">{strings.take.way}</a>
            <span class="muted">{words.drop}</span>
          </div>
          <BringFile onText={brought.takeText} onFetched={brought.takeFetched} />
          <h2>{words.own}</h2>
          {files.length === 0 && <p class="muted">{words.none}</p>}
          {files.map((file) => (
            <OwnRow
              key={file.id}
              file={file}
              origin={origins.get(file.id)}
              onEdit={() => show(file.id)}
              onRemove={async () => {
                // Together with the row's end, so that the focus finds the way back.
                setRemoved({ file, origin: origins.get(file.id) });
                await Promise.all([remove(file.id), removeOrigin(file.id)]);
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
            <p>{words.removed(nameOf(removed.file.draft))}</p>
            <button
              type="button"
              onClick={() => {
                write(removed.file.id, removed.file.draft);
                if (removed.origin) writeOrigin(removed.file.id, removed.origin);
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
