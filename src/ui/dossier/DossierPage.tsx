import { useEffect, useRef, useState } from 'preact/hooks';
import type { Problem } from '../../problem';
import { caseOf, type Dossier, dossierOf, type SavedCase } from '../../watch';
import { chosenLanguage, strings } from '../../words';
import { inWatchList } from '../in-watch-list';
import { Notice } from '../parts/Notice';
import { ProblemNote } from '../parts/ProblemNote';
import { saveAsFile } from '../save-as-file';
import { DossierDocument } from './DossierDocument';
import style from './document.css?inline';
import { dossierFile, dossierFileName, markupOf } from './dossier-file';

type State =
  | { kind: 'opening' }
  | { kind: 'missing' }
  | { kind: 'failed'; problem: Problem }
  | { kind: 'ready'; dossier: Dossier };

/** The dossier of one saved case, with the two ways to take it along. */
export function DossierPage({ id }: { id: string }) {
  const state = useDossier(id);
  const room = useRef<HTMLDivElement>(null);
  const save = (dossier: Dossier) => {
    const document = room.current?.querySelector('.dossier');
    if (!document) return;
    const text = dossierFile({ title: dossier.title, language: chosenLanguage(), body: markupOf(document), style });
    saveAsFile(text, dossierFileName(dossier.title, dossier.readAt.slice(0, 10)), 'text/html');
  };
  return (
    <main class="dossier-page">
      <div class="dossier-actions row">
        <a href={`#case=${encodeURIComponent(id)}`}>{strings.dossier.back}</a>
        {state.kind === 'ready' && (
          <>
            <button type="button" class="main" onClick={() => print()}>
              {strings.dossier.print}
            </button>
            <button type="button" onClick={() => save(state.dossier)}>
              {strings.dossier.save}
            </button>
          </>
        )}
      </div>
      {state.kind === 'opening' && <p role="status">{strings.dossier.opening}</p>}
      {state.kind === 'missing' && <Notice text={strings.dossier.missing} />}
      {state.kind === 'failed' && <ProblemNote problem={state.problem} />}
      <div ref={room}>{state.kind === 'ready' && <DossierDocument dossier={state.dossier} />}</div>
    </main>
  );
}

/** The latest look's document; a look that cannot be read has none. */
function stateOf(saved: SavedCase): State {
  const [latest] = saved.looks;
  const kase = caseOf(saved);
  if (latest?.state === 'readable' && kase) {
    return { kind: 'ready', dossier: dossierOf({ record: saved.record, case: kase, pictures: latest.pictures }) };
  }
  return latest && latest.state !== 'readable' ? { kind: 'failed', problem: latest.problem } : { kind: 'missing' };
}

/** Reads the case once more whenever the user comes back to the page: a note may have been written elsewhere. */
function useDossier(id: string): State {
  const [state, setState] = useState<State>({ kind: 'opening' });
  useEffect(() => {
    let current = true;
    const show = async () => {
      if (document.hidden) return;
      const read = await inWatchList((list) => list.get(id));
      if (!current) return;
      if (read.ok) setState(stateOf(read.value));
      else if (read.problem.code === 'record-missing') setState({ kind: 'missing' });
      else setState({ kind: 'failed', problem: read.problem });
    };
    show();
    document.addEventListener('visibilitychange', show);
    return () => {
      current = false;
      document.removeEventListener('visibilitychange', show);
    };
  }, [id]);

  // The name that the browser proposes for a printed file is the title of the page.
  useEffect(() => {
    const before = document.title;
    if (state.kind === 'ready') document.title = `${strings.dossier.openOf(state.dossier.title)} – ${strings.product}`;
    return () => {
      document.title = before;
    };
  }, [state]);
  return state;
}
