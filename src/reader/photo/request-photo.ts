import type { Problem, Told } from '../../problem';
import { isRedirect, readUpTo } from '../counted-body';
import { drawingProblem, isDrawing } from './drawing';
import { mostPhotoBytes } from './photo-limits';

/*
 * The one place that asks a server for a photo, in the page as in the background; free of zod and of the extension's
 * interfaces, because the script inside the page carries it.
 */

export interface PhotoRequest {
  credentials: 'omit' | 'same-origin';
  /** Milliseconds until the last byte has to be there. */
  withinMs: number;
  mostBytes?: number;
  referrerPolicy?: ReferrerPolicy;
}

export type RequestedPhoto = { ok: true; value: Blob } | { ok: false; problem: Problem };

/**
 * Bytes of a photo. A redirect is not followed: the browser does not tell where it leads, and it may lead into a network
 * that only the user reaches. Nothing is left in the browser's cache. The body is counted as it comes and ended at the
 * limit, whatever length the server claims.
 */
export async function requestPhoto(url: string, request: PhotoRequest): Promise<RequestedPhoto> {
  const { credentials, withinMs, mostBytes = mostPhotoBytes, referrerPolicy } = request;
  const deadline = AbortSignal.timeout(withinMs);
  try {
    const response = await fetch(url, {
      mode: 'cors',
      credentials,
      cache: 'no-store',
      redirect: 'manual',
      signal: deadline,
      ...(referrerPolicy && { referrerPolicy }),
    });
    const refused = refusalOf(url, response, mostBytes);
    if (refused) {
      await response.body?.cancel();
      return { ok: false, problem: refused };
    }
    const parts = await readUpTo(mostBytes, response.body);
    if (parts === null) return { ok: false, problem: tooLarge(url) };
    return { ok: true, value: new Blob(parts, { type: response.headers.get('content-type') ?? '' }) };
  } catch {
    return deadline.aborted
      ? refuse({ code: 'photo-late', where: url, data: { seconds: Math.ceil(withinMs / 1000) } })
      : refuse({ code: 'photo-unreachable', where: url });
  }
}

function refusalOf(url: string, response: Response, mostBytes: number): Problem | null {
  if (isRedirect(response)) return { code: 'photo-redirected', where: url } satisfies Told;
  if (!response.ok) return { code: 'photo-missing', where: url, data: { status: response.status } } satisfies Told;
  // Such a file can hold programs, and the reader takes none.
  if (isDrawing(response.headers.get('content-type') ?? '')) return drawingProblem(url);
  return Number(response.headers.get('content-length')) > mostBytes ? tooLarge(url) : null;
}

export const tooLarge = (where: string) =>
  ({ code: 'photo-too-large', where, data: { megabytes: mostPhotoBytes / 1e6 } }) satisfies Told;

const refuse = (problem: Told): RequestedPhoto => ({ ok: false, problem });
