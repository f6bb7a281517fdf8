import type { Result } from '../problem';
import type { WatchDatabase } from './database';
import { addLook } from './join';
import type { Anew } from './judge-anew';
import type { WatchPorts } from './ports';
import { readSaved } from './read-saved';
import type { latestLookOf, SavedCase } from './saved-case';
import { type SentNow, withChanges } from './sent-changes';
import type { Action } from './store';
import type { WatchRecord } from './types';

interface Ways {
  attempt<T>(work: () => Promise<Result<T>>): Promise<Result<T>>;
  change<T>(work: (action: Action) => Promise<Result<T>>): Promise<Result<T>>;
}

/**
 * Puts one more look of a record into the list: its latest one with what `work` makes of it, judged as of now. `sentNow`: the
 * photos that it brings or takes out.
 */
export const judgingIn =
  (database: WatchDatabase, ports: WatchPorts, { attempt, change }: Ways) =>
  async (
    id: string,
    work: (saved: SavedCase, anew: Anew) => ReturnType<typeof latestLookOf>,
    sentNow: SentNow = {},
  ): Promise<Result<WatchRecord>> => {
    const prepared = await attempt(async () => {
      const read = await readSaved(database, id, ports);
      if (!read.ok) return read;
      const judges = { rules: ports.rules, makers: read.value.makers };
      return work(read.value, { now: ports.now(), judges, packing: ports.packing });
    });
    if (!prepared.ok) return prepared;
    const { latest, parts } = prepared.value;
    return change(async (action) => {
      const found = await action.open(id);
      if (!found.ok) return found;
      const now = ports.now();
      const sentChanges = withChanges(found.value.sentChanges, sentNow, now);
      return action.put({ ...addLook(found.value, latest), sentChanges, changedAt: now }, parts);
    });
  };
