import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Problem } from '../../problem';
import type { WatchRecord } from '../../watch';
import { inWatchList } from '../in-watch-list';
import { pickPictures } from './pick-pictures';
import type { PanelState } from './state';

export interface SavedCase {
  record: WatchRecord | null;
  /** Saved in this sitting. */
  justSaved: boolean;
  problem: Problem | null;
  save(): Promise<void>;
}

/** The saved case of the listing on the screen, and the button that saves. Nothing is opened in private windows. */
export function useSaved(state: PanelState): SavedCase {
  const [record, setRecord] = useState<WatchRecord | null>(null);
  const [justSaved, setJustSaved] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const url = state.listing?.kind === 'listing' && !state.incognito ? state.listing.url : null;

  useEffect(() => {
    let current = true;
    setRecord(null);
    setJustSaved(false);
    setProblem(null);
    if (url === null) return;
    inWatchList((list) => list.findByUrl(url)).then((found) => {
      if (!current) return;
      if (found.ok) setRecord(found.value);
      else setProblem(found.problem);
    });
    return () => {
      current = false;
    };
  }, [url]);

  const save = useCallback(async () => {
    const { case: kase, incognito } = state;
    if (!kase || incognito) return;
    const saved = await inWatchList((list) => list.save(kase, pickPictures(kase, state.views)));
    if (saved.ok) {
      setRecord(saved.value);
      setJustSaved(true);
      setProblem(null);
    } else setProblem(saved.problem);
  }, [state]);
  return { record, justSaved, problem, save };
}
