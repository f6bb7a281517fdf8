const slice = 0x8000;

/** Bytes as base64, in slices: spreading a whole photo into one call overflows the stack. */
export function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let at = 0; at < bytes.length; at += slice) text += String.fromCharCode(...bytes.subarray(at, at + slice));
  return btoa(text);
}

/** The bytes of a base64 text. Throws on anything else. */
export function fromBase64(base64: string): Uint8Array<ArrayBuffer> {
  const text = atob(base64);
  const bytes = new Uint8Array(text.length);
  for (let at = 0; at < text.length; at++) bytes[at] = text.charCodeAt(at);
  return bytes;
}
