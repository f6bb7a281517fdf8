import type { Result } from '../../problem';
import { hasOffscreen } from '../compat';
import type { Adjustment, PhotoView } from '../protocol';
import { send } from '../send';
import { createReaderHost } from './host';

export interface Reader {
  read(photoId: string, base64: string, adjustment: Adjustment): Promise<Result<PhotoView>>;
  renew(): Promise<unknown>;
}

/** The reader as the panel sees it: in the offscreen document where the browser has one, else in the panel. */
export function connectReader(): Reader {
  return hasOffscreen() ? offscreenReader : createReaderHost();
}

const offscreenReader: Reader = {
  async read(photoId, base64, adjustment) {
    const input = { photoId, base64, adjustment };
    const first = await send('photo.read', input);
    if (first.ok || first.problem.code !== 'no-answer') return first;
    // The browser closed the document, or it was never opened.
    const opened = await send('reader.open', {});
    return opened.ok ? send('photo.read', input) : opened;
  },
  async renew() {
    const opened = await send('reader.open', {});
    return opened.ok ? send('reader.renew', {}) : opened;
  },
};
