import type { SentPhoto } from '../../case';
import { type Result, succeed } from '../../problem';
import { packing } from '../../store/packing';
import type { GivenPhoto } from '../panel/sent-photos';
import { bytesOf, contentOf } from '../start/photo-of-file';

/** A file as a photo of the case. Its bytes name it: the same file is one photo, however often it is dropped. */
export async function givenPhoto(file: File, said: Pick<SentPhoto, 'from' | 'on'>): Promise<Result<GivenPhoto>> {
  const held = await contentOf(file);
  if (!held.ok) return held;
  const name = await packing.digest(new Uint8Array(held.value));
  return succeed({ photo: { id: `sent-${name.slice(0, 32)}`, ...said }, bytes: bytesOf(held.value, file.type) });
}

/** Today where the buyer is: a chat's photos came on a day of the buyer's own calendar. */
export function today(now = new Date()): string {
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
