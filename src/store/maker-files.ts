import * as z from 'zod';
import { browser } from '../browser/api';
import { currentDraft, type Draft, draftSchema, inspectDraft, type MakerFile } from '../maker';

/**
 * The user's own maker files, each as a draft with its steps back and forth: nothing is lost on reload. One storage
 * entry each, so that two open pages do not write over each other's files.
 */
const prefix = 'maker-draft-';
const storedSchema = z.strictObject({ changedAt: z.string(), draft: draftSchema });

export interface OwnMakerFile {
  id: string;
  changedAt: string;
  draft: Draft;
}

/** All of them, the latest change first. An entry that cannot be read is left where it lies. */
export async function readOwnMakers(): Promise<OwnMakerFile[]> {
  const all = await browser.storage.local.get(null);
  return Object.entries(all)
    .flatMap(([key, value]) => {
      const stored = key.startsWith(prefix) ? storedSchema.safeParse(value) : null;
      if (!stored?.success) return [];
      const { changedAt, draft } = stored.data;
      return [{ id: key.slice(prefix.length), changedAt, draft: currentDraft(draft) }];
    })
    .sort((a, b) => b.changedAt.localeCompare(a.changedAt));
}

export const writeOwnMaker = (id: string, draft: Draft): Promise<void> =>
  browser.storage.local.set({ [prefix + id]: { changedAt: new Date().toISOString(), draft } });

export const removeOwnMaker = (id: string): Promise<void> => browser.storage.local.remove(prefix + id);

/** The user's own files that are finished, the latest change last, so that it wins. */
export async function finishedMakers(): Promise<MakerFile[]> {
  const own = await readOwnMakers();
  return own.flatMap(({ draft }) => inspectDraft(draft).file ?? []).reverse();
}

/** Tells when one of the user's own files was written or removed, on whatever page; what it returns ends that. */
export function onOwnMakers(tell: () => void): () => void {
  const heard = (changes: Record<string, unknown>) => {
    if (Object.keys(changes).some((key) => key.startsWith(prefix))) tell();
  };
  browser.storage.local.onChanged.addListener(heard);
  return () => browser.storage.local.onChanged.removeListener(heard);
}
