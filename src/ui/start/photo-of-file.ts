import { toBase64 } from '../../message/bytes';
import type { PhotoBytes } from '../../message/protocol';
import { fail, problem, type Result, succeed } from '../../problem';
import { mostPhotoBytes } from '../../reader/photo/photo-limits';

/** A photo that came without a page, and the way to its bytes. */
export interface LoosePhoto {
  id: string;
  bytes(): Promise<Result<PhotoBytes>>;
}

/** A file of the buyer's disk. Its name is told to nobody; what it is tell its bytes. */
export const photoOfFile = (file: File): LoosePhoto => ({
  id: crypto.randomUUID(),
  async bytes() {
    const held = await contentOf(file);
    return held.ok ? succeed(bytesOf(held.value, file.type)) : held;
  },
});

/** What a file holds, unless it is larger than any photo or gone. */
export async function contentOf(file: File): Promise<Result<ArrayBuffer>> {
  if (file.size > mostPhotoBytes) return fail(tooLarge(file.name));
  try {
    return succeed(await file.arrayBuffer());
  } catch {
    return fail(gone(file.name));
  }
}

export const bytesOf = (bytes: ArrayBuffer, mediaType: string): PhotoBytes => ({
  base64: toBase64(new Uint8Array(bytes)),
  mediaType,
  came: { way: 'page', fullSize: true },
});

export const gone = (where: string) => problem('photo-file-gone', where);
const tooLarge = (where: string) => problem('photo-too-large', where, { megabytes: mostPhotoBytes / 1e6 });
