import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { watchPorts } from '../../bridge/watch-ports';
import type { Problem, Result } from '../../problem';
import { openWatchList, type WatchList, type WatchRow } from '../../watch';

export interface WatchState {
  rows: WatchRow[] | null;
  wiped: boolean;
  problem: Problem | null;
  /** Carries out one action on the list and shows the list after it. */
  act<T>(work: (list: WatchList) => Promise<Result<T>>): Promise<Result<T> | null>;
  acceptWipe(): Promise<void>;
}

/** The watch list while the page is open; it is read again when the user comes back to it. */
export function useWatchList(): WatchState {
  const list = useRef<WatchList | null>(null);
  const [rows, setRows] = useState<WatchRow[] | null>(null);
  const [wiped, setWiped] = useState(false);
  const [problem, setProblem] = useState<Problem | null>(null);

  const show = useCallback(async () => {
    const read = await list.current?.rows();
    if (read?.ok) setRows(read.value);
    else if (read) setProblem(read.problem);
  }, []);

  useEffect(() => {
    let ended = false;
    openWatchList(watchPorts).then(async (opened) => {
      if (!opened.ok) return setProblem(opened.problem);
      if (ended) return opened.value.close();
      list.current = opened.value;
      const wipe = await opened.value.isWiped();
      setWiped(wipe.ok && wipe.value);
      if (!(wipe.ok && wipe.value)) await opened.value.emptyBin();
      await show();
    });
    document.addEventListener('visibilitychange', show);
    return () => {
      ended = true;
      document.removeEventListener('visibilitychange', show);
      list.current?.close();
    };
  }, [show]);

  const act = useCallback(
    async <T>(work: (list: WatchList) => Promise<Result<T>>) => {
      if (!list.current) return null;
      const result = await work(list.current);
      setProblem(result.ok ? null : result.problem);
      await show();
      return result;
    },
    [show],
  );
  const acceptWipe = useCallback(async () => {
    await list.current?.acceptWipe();
    setWiped(false);
  }, []);
  return { rows, wiped, problem, act, acceptWipe };
}
