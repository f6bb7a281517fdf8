import type { SentPhoto } from '../../case';
import { type Result, succeed } from '../../problem';
import type { GivenPhoto } from '../panel/sent-photos';
import { photoOfFile } from '../start/photo-of-file';

/** A file as a photo of the case. Its bytes name it: the same file is one photo, however often it is dropped. */
export async function givenPhoto(file: File, said: Pick<SentPhoto, 'from' | 'on'>): Promise<Result<GivenPhoto>> {
  const bytes = await photoOfFile(file).bytes();
  if (!bytes.ok) return bytes;
  const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  const name = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return succeed({ photo: { id: `sent-${name.slice(0, 32)}`, ...said }, bytes: bytes.value });
}

/** Today where the buyer is: a chat's photos came on a day of the buyer's own calendar. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
