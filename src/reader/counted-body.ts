/*
 * What every request of ours does with an answer, in the page as in the extension; free of zod and of the extension's
 * interfaces, because the script inside the page carries it.
 */

/** Browsers hide a redirect's answer behind this type; elsewhere its number is seen. */
export const isRedirect = ({ type, status }: Response): boolean =>
  type === 'opaqueredirect' || [301, 302, 303, 307, 308].includes(status);

/** The parts of a body, or null when they are more than so many bytes: then the server is told to stop. */
export async function readUpTo(mostBytes: number, body: Response['body']): Promise<Uint8Array<ArrayBuffer>[] | null> {
  if (body === null) return [];
  const reader = body.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  for (let taken = 0; ; ) {
    const { done, value } = await reader.read();
    if (done) return parts;
    taken += value.byteLength;
    if (taken > mostBytes) {
      await reader.cancel();
      return null;
    }
    parts.push(value);
  }
}
