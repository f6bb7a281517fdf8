import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Problem } from '../../problem';
import type { AskedQuestion, WatchRecord } from '../../watch';
import { inWatchList } from '../in-watch-list';
import { pickPictures, sentFiles } from './pick-pictures';
import type { PanelState } from './state';

export interface SavedCase {
  record: WatchRecord | null;
  /** Saved in this sitting. */
  justSaved: boolean;
  problem: Problem | null;
  save(): Promise<void>;
  /** Questions that were asked, and the way to note more; before the case is saved they wait for it. */
  asked: readonly AskedQuestion[];
  noteAsked(ids: readonly string[]): Promise<void>;
  /** Keeps what the seller replied with the case; false where that failed. */
  keepReply(text: string): Promise<boolean>;
}

/** The saved case of the listing on the screen, and the button that saves. Nothing is opened in private windows. */
export function useSaved(state: PanelState): SavedCase {
  const [record, setRecord] = useState<WatchRecord | null>(null);
  const [justSaved, setJustSaved] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [waiting, setWaiting] = useState<readonly string[]>([]);
  const url = state.listing?.kind === 'listing' && !state.incognito ? state.listing.url : null;

  useEffect(() => {
    let current = true;
    setRecord(null);
    setJustSaved(false);
    setProblem(null);
    setWaiting([]);
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
    const saved = await inWatchList(async (list) => {
      const kept = await list.save(
        kase,
        pickPictures(kase, state.views),
        await sentFiles(kase, state.files),
        state.removedSent,
      );
      return kept.ok && waiting.length > 0 ? list.setAsked(kept.value.id, waiting) : kept;
    });
    if (saved.ok) {
      setRecord(saved.value);
      setWaiting([]);
      setJustSaved(true);
      setProblem(null);
    } else setProblem(saved.problem);
  }, [state, waiting]);

  const noteAsked = useCallback(
    async (ids: readonly string[]) => {
      if (!record) return setWaiting(ids);
      const noted = await inWatchList((list) => list.setAsked(record.id, ids));
      if (noted.ok) setRecord(noted.value);
      else setProblem(noted.problem);
    },
    [record],
  );

  const keepReply = useCallback(
    async (text: string): Promise<boolean> => {
      if (!record) return false;
      const kept = await inWatchList((list) => list.addReply(record.id, text));
      if (kept.ok) setRecord(kept.value);
      else setProblem(kept.problem);
      return kept.ok;
    },
    [record],
  );
  return { record, justSaved, problem, save, asked: record?.asked ?? [], noteAsked, keepReply };
}
