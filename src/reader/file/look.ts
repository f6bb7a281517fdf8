import { changesOf, isSameMaker, levelledWith, type MakerFile, parseMakerFile, withChanges } from '../../maker';
import { type Problem, problem } from '../../problem';
import type { FileOrigin, FileVersion, Trouble } from '../../store/file-origins';
import { type FileAt, type FilePorts, readFileAt } from './read-file';

const dayMs = 24 * 60 * 60 * 1000;
/** Problems of a file that are kept for its screen. */
const mostTroubles = 5;

/** The origin of a file that has just been taken from an address. */
export const originOf = (read: FileAt, daily: boolean): FileOrigin => ({
  address: read.address,
  daily,
  asked: read.at,
  used: versionOf(read),
  found: null,
  troubles: [],
  before: null,
});

const versionOf = ({ at, sha256, file }: FileAt): FileVersion => ({ at, sha256, file });

/** Whether a file that is looked at once a day is to be looked at. A clock that was set back does not stop it. */
export function isDue({ daily, asked }: FileOrigin, now: Date): boolean {
  const since = now.getTime() - Date.parse(asked);
  return daily && !(since >= 0 && since < dayMs);
}

/** Asks the address again. What is found waits until it is used; what fails is told, and nothing else changes. */
export async function lookAgain(origin: FileOrigin, ports: FilePorts): Promise<FileOrigin> {
  const read = await readFileAt(origin.address, ports);
  return read.ok ? withFound(origin, read.value) : withTroubles(origin, read.problems, ports.now());
}

/** The origin with what was read at its address now. */
export function withFound(origin: FileOrigin, read: FileAt): FileOrigin {
  const { used } = origin;
  if (!isSameMaker(used.file, read.file)) {
    const trouble = problem('file-other-maker', origin.address, { now: read.file.maker, before: used.file.maker });
    return withTroubles(origin, [trouble], new Date(read.at));
  }
  const known = (origin.found ?? used).sha256 === read.sha256;
  return { ...origin, asked: read.at, troubles: [], found: known ? origin.found : versionOf(read) };
}

/** The origin when asking brought nothing. */
export const withTroubles = (origin: FileOrigin, problems: readonly Trouble[], now: Date): FileOrigin => ({
  ...origin,
  asked: now.toISOString(),
  troubles: problems.slice(0, mostTroubles),
});

/** What was found and not used yet, against the buyer's own file. */
export const waitingChanges = ({ used, found }: FileOrigin, own: MakerFile) =>
  found ? changesOf({ base: used.file, own, now: found.file }) : [];

export type Updated = { ok: true; own: MakerFile; origin: FileOrigin } | { ok: false; problems: Problem[] };

/**
 * The own file with some of what was found. `left` are the changes that are told again another time; the others are
 * settled, used or not. A file that would hold together no more is refused, and nothing changes.
 */
export function updatedWith(
  origin: FileOrigin,
  own: MakerFile,
  used: ReadonlySet<string>,
  left: ReadonlySet<string>,
): Updated {
  const { found } = origin;
  if (!found) return { ok: true, own, origin };
  const merged = withChanges(
    own,
    found.file,
    waitingChanges(origin, own).filter(({ id }) => used.has(id)),
  );
  const checked = parseMakerFile(merged);
  if (!checked.ok) return { ok: false, problems: checked.problems };
  const level = { ...found, file: levelledWith(origin.used.file, found.file, left) };
  const before = { used: origin.used, found, own, after: checked.file };
  return {
    ok: true,
    own: checked.file,
    origin: { ...origin, used: level, found: left.size > 0 ? found : null, before },
  };
}

/** The own file without the last update. What the buyer changed since of the same entries stays, and is counted. */
export function withoutUpdate(
  origin: FileOrigin,
  own: MakerFile,
): { own: MakerFile; origin: FileOrigin; kept: number } {
  const { before } = origin;
  if (!before) return { own, origin, kept: 0 };
  const back = changesOf({ base: before.after, own, now: before.own });
  const undone = withChanges(
    own,
    before.own,
    back.filter(({ conflict }) => !conflict),
  );
  return {
    own: undone,
    origin: { ...origin, used: before.used, found: origin.found ?? before.found, before: null },
    kept: back.filter(({ conflict }) => conflict).length,
  };
}
