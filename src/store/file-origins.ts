import { browser } from '../browser/api';
import { type MakerFile, type MakerProblem, makerFileForm } from '../maker';
import type { Problem } from '../problem';
import { keptUnder, onKeptUnder } from './kept-under';
import { openOrigin } from './record';

/** One version of a maker file at an address. */
export interface FileVersion {
  at: string;
  sha256: string;
  file: MakerFile;
}

/** Why asking an address brought nothing: of a file that cannot be used, what is wrong in it and in which line. */
export type Trouble = Problem & Partial<Pick<MakerProblem, 'fault' | 'line'>>;

/** Where one of the buyer's maker files is from, and what was used of it. */
export interface FileOrigin {
  address: string;
  daily: boolean;
  asked: string;
  used: FileVersion;
  found: FileVersion | null;
  troubles: Trouble[];
  before: { used: FileVersion; found: FileVersion; own: MakerFile; after: MakerFile } | null;
}

/** By the file's own number, beside its draft: a build that knows nothing of addresses still has the file. */
const prefix = 'maker-origin-';

/** All of them, by the number of their file. One that cannot be read is left where it lies. */
export async function readOrigins(): Promise<Map<string, FileOrigin>> {
  const kept = await keptUnder(prefix);
  return new Map(
    kept.flatMap(([id, value]) => {
      const origin = originOf(value);
      return origin ? [[id, origin] as const] : [];
    }),
  );
}

/** That of one file; null when there is none, or none that can be read. */
export async function readOrigin(id: string): Promise<FileOrigin | null> {
  const key = prefix + id;
  return originOf((await browser.storage.local.get(key))[key]);
}

/** A stored origin with its files in the format of today; null when it is none. */
function originOf(value: unknown): FileOrigin | null {
  try {
    const { version: _, used, found, before, troubles, ...rest } = openOrigin(value);
    return {
      ...rest,
      troubles: troubles as Trouble[],
      used: versionOf(used),
      found: found && versionOf(found),
      before: before && {
        used: versionOf(before.used),
        found: versionOf(before.found),
        own: makerFileForm(before.own),
        after: makerFileForm(before.after),
      },
    };
  } catch {
    return null;
  }
}

const versionOf = ({ file, ...rest }: { at: string; sha256: string; file: unknown }): FileVersion => ({
  ...rest,
  file: makerFileForm(file),
});

export const writeOrigin = (id: string, origin: FileOrigin): Promise<void> =>
  browser.storage.local.set({ [prefix + id]: { version: 2, ...origin } });

export const removeOrigin = (id: string): Promise<void> => browser.storage.local.remove(prefix + id);

/** Tells when one of them was written or removed, on whatever page; what it returns ends that. */
export const onOrigins = (tell: () => void): (() => void) => onKeptUnder(prefix, tell);
