import { fromBase64 } from '../../message/bytes';
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
    const own = fromBase64(bytes.base64);
    const address = URL.createObjectURL(new Blob([own]));
    try {
      const outcome = await readOnceMore(() => reader.read(photo.id, address, noAdjustment));
      const file = fileOf(own);
      read.push({ ...keptOfView(photo, outcome), ...(file && { file }) });
    } finally {
      URL.revokeObjectURL(address);
    }
  }
  return read;
}
