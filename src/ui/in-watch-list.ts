import { watchPorts } from '../store/watch-ports';
import { openWatchList, type WatchList } from '../watch';

/** Opens the list for one action and closes it: an open list would hold up an update of its structure. */
export async function inWatchList<T>(work: (list: WatchList) => Promise<T>) {
  const opened = await openWatchList(watchPorts);
  if (!opened.ok) return opened;
  try {
    return await work(opened.value);
  } finally {
    opened.value.close();
  }
}
