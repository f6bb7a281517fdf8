/** What a frame says of itself: the address it was asked for, and the words that it shows. */
export interface FrameText {
  address: string;
  text: string;
}

/**
 * Reads the words that a frame shows. Runs inside the frame, injected as source, so it uses nothing from outside
 * itself; it only reads. Null for a frame that is still loading, is very large (asking for its words lays it out), or
 * shows nothing. Prototype getters, because a form named "body" hides the document's own.
 */
export function readFrameText(mostLetters: number, mostElements: number): FrameText | null {
  const read = <T>(prototype: object, name: string, of: object): T =>
    Object.getOwnPropertyDescriptor(prototype, name)?.get?.call(of) as T;
  try {
    if (read<string>(Document.prototype, 'readyState', document) === 'loading') return null;
    if (Document.prototype.getElementsByTagName.call(document, '*').length > mostElements) return null;
    const body = read<HTMLElement | null>(Document.prototype, 'body', document);
    const text = body === null ? '' : read<string>(HTMLElement.prototype, 'innerText', body).trim();
    return text === '' ? null : { address: location.href, text: text.slice(0, mostLetters) };
  } catch {
    return null;
  }
}
