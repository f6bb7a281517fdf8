import { isRedirect, readUpTo } from '../counted-body';

/** What came of asking a server for a file. */
export type FileAnswer =
  | { kind: 'answered'; status: number; bytes: Uint8Array<ArrayBuffer> }
  /** `cut`: the answer ended before its end. */
  | { kind: 'led-on' | 'too-large' | 'cut' | 'late' | 'offline' | 'unreachable' };

export type AskFile = (address: string, mostBytes: number) => Promise<FileAnswer>;

const withinMs = 30_000;

/**
 * Asks a server for a file: without cookies, without saying from where, and nothing is left in the browser's cache. A
 * redirect is not followed, as the right that the buyer gave is for one host alone. The body is counted as it comes and
 * ended at the limit, whatever length the server claims.
 */
export async function askFile(address: string, mostBytes: number): Promise<FileAnswer> {
  const deadline = AbortSignal.timeout(withinMs);
  let response: Response;
  try {
    response = await fetch(address, {
      credentials: 'omit',
      cache: 'no-store',
      redirect: 'manual',
      referrerPolicy: 'no-referrer',
      signal: deadline,
    });
  } catch {
    if (deadline.aborted) return { kind: 'late' };
    return { kind: navigator.onLine === false ? 'offline' : 'unreachable' };
  }
  const { status, body, headers } = response;
  const ended = isRedirect(response)
    ? 'led-on'
    : Number(headers.get('content-length')) > mostBytes
      ? 'too-large'
      : null;
  try {
    if (ended !== null || !response.ok) {
      await body?.cancel();
      return ended === null ? { kind: 'answered', status, bytes: new Uint8Array() } : { kind: ended };
    }
    const parts = await readUpTo(mostBytes, body);
    if (parts === null) return { kind: 'too-large' };
    return { kind: 'answered', status, bytes: new Uint8Array(await new Blob(parts).arrayBuffer()) };
  } catch {
    return { kind: deadline.aborted ? 'late' : 'cut' };
  }
}
