import { browser } from '../../browser/api';
import { hostPatterns, notGranted } from '../../browser/permissions';
import { type Problem, problem } from '../../problem';
import { type FileOrigin, readOrigin, readOrigins, writeOrigin } from '../../store/file-origins';
import { packing } from '../../store/packing';
import { askFile } from './ask-file';
import { isDue, lookAgain, withTroubles } from './look';
import type { FilePorts } from './read-file';

export const filePorts: FilePorts = { ask: askFile, digest: packing.digest, now: () => new Date() };

/** The buyer did not give, or took back, the right to an address. */
export const notAllowed = (address: string): Problem => problem('file-not-allowed', address);

/** Asks one file's address again, and keeps what came of it unless the file was changed meanwhile. */
export async function lookAt(id: string, origin: FileOrigin): Promise<void> {
  const missing = await notGranted(hostPatterns([origin.address]));
  const looked =
    missing.length > 0
      ? withTroubles(origin, [notAllowed(origin.address)], filePorts.now())
      : await lookAgain(origin, filePorts);
  const present = await readOrigin(id);
  if (!present || present.used.sha256 !== origin.used.sha256 || present.used.at !== origin.used.at) return;
  const { asked, troubles, found } = looked;
  await writeOrigin(id, { ...present, asked, troubles, found });
}

/**
 * Asks the addresses that the buyer wants looked at once a day, where a day has passed. It is called when a page of the
 * extension opens: no right to wake up is asked for, and who does not use the extension asks nobody. In a private window,
 * where Firefox opens these pages too, nothing is asked.
 */
export async function lookWhereDue(): Promise<void> {
  if (browser.extension.inIncognitoContext) return;
  const now = filePorts.now();
  for (const [id, origin] of await readOrigins()) if (isDue(origin, now)) await lookAt(id, origin);
}
