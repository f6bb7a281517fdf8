import { noAdjustment } from '../../photo/adjustment-types';
import { type Reader, readOnceMore } from '../../reader';
import type { BroughtPhoto } from '../../watch';
import { fileOf, type GivenPhoto, keptOfView } from '../panel/sent-photos';

/** Reads photos that no session holds, one after the other, for a case that is kept. */
export async function readGiven(
  given: readonly GivenPhoto[],
  reader: Pick<Reader, 'read' | 'renew'>,
): Promise<BroughtPhoto[]> {
  const read: BroughtPhoto[] = [];
  await reader.renew();
  for (const { photo, bytes } of given) {
    const outcome = await readOnceMore(() => reader.read(photo.id, bytes.base64, noAdjustment));
    read.push({ ...keptOfView(photo, outcome), file: fileOf(bytes) });
  }
  return read;
}
