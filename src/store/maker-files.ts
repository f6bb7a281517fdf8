import * as z from 'zod';
import { browser } from '../browser/api';
import { currentDraft, type Draft, draftSchema, inspectDraft, type MakerFile } from '../maker';
import { keptUnder, onKeptUnder } from './kept-under';

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
  const kept = await keptUnder(prefix);
  return kept
    .flatMap(([id, value]) => {
      const stored = storedSchema.safeParse(value);
      if (!stored.success) return [];
      const { changedAt, draft } = stored.data;
      return [{ id, changedAt, draft: currentDraft(draft) }];
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
export const onOwnMakers = (tell: () => void): (() => void) => onKeptUnder(prefix, tell);
