import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import type { Problem, Result } from '../../problem';
import { watchPorts } from '../../store/watch-ports';
import { type Change, type Loss, openWatchList, type WatchList, type WatchRow } from '../../watch';
import { afterChange } from './after-change';
import { likenessOfPicture } from './likeness-of-picture';

export interface WatchState {
  /** Null until the list is open. */
  rows: WatchRow[] | null;
  loss: Loss | null;
  problem: Problem | null;
  /** Carries out one action on the list; the rows that it changes follow by themselves. */
  act<T>(work: (list: WatchList) => Promise<Result<T>>): Promise<Result<T> | null>;
  /** Reads something without a word on the screen: a picture that cannot be read is left out. */
  look<T>(work: (list: WatchList) => Promise<Result<T>>): Promise<Result<T> | null>;
  takeNoteOfLoss(): Promise<void>;
}

/** The watch list while the page is open; its rows are read again when the user comes back to it. */
export function useWatchList(): WatchState {
  const list = useRef<WatchList | null>(null);
  const [rows, setRows] = useState<WatchRow[] | null>(null);
  const [loss, setLoss] = useState<Loss | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);

  const show = useCallback(async () => {
    if (document.hidden) return;
    const read = await list.current?.rows();
    if (read?.ok) setRows(read.value);
    else if (read) setProblem(read.problem);
  }, []);

  useEffect(() => {
    let ended = false;
    const follow = (change: Change) => setRows((present) => present && afterChange(present, change));
    openWatchList(watchPorts, follow).then(async (opened) => {
      if (!opened.ok) return setProblem(opened.problem);
      if (ended) return opened.value.close();
      list.current = opened.value;
      setLoss(opened.value.loss());
      await opened.value.emptyBin();
      await show();
      await opened.value.workOutLikenesses(likenessOfPicture);
    });
    document.addEventListener('visibilitychange', show);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', show);
      list.current?.close();
    };
  }, [show]);

  const act = useCallback(async <T>(work: (list: WatchList) => Promise<Result<T>>) => {
    if (!list.current) return null;
    const result = await work(list.current);
    setProblem(result.ok ? null : result.problem);
    return result;
  }, []);
  const look = useCallback(
    async <T>(work: (list: WatchList) => Promise<Result<T>>) => (list.current ? work(list.current) : null),
    [],
  );
  const takeNoteOfLoss = useCallback(async () => {
    const taken = await list.current?.takeNoteOfLoss();
    if (taken?.ok) setLoss(null);
    else if (taken) setProblem(taken.problem);
  }, []);
  return { rows, loss, problem, act, look, takeNoteOfLoss };
}
