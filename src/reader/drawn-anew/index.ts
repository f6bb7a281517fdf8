import { askRoom, type Room } from '../ask-room';

/** How files begin that browsers show nothing of, TIFF and HEIC, and AVIF, which they do show. Source: TIFF 6.0, ISO/IEC 14496-12. */
const openings = /^(?:II\*\0|MM\0\*|[\s\S]{4}ftyp)/;

export type DrawnAnew = Blob | null;

const openDrawingRoom = (): Room =>
  new Worker(new URL('./drawing-room.ts', import.meta.url), { type: 'module', name: 'drawing' });

/**
 * A photo as browsers show it: TIFF and HEIC, which they read nothing of, drawn anew in a worker that lives for it, as
 * decoding takes a second of a screen's time. Null for all others, for what cannot be drawn, and when `signal` ended it
 * before; throws what the browser says where there is no worker.
 */
export async function drawnAnew(photo: Blob, signal: AbortSignal, openRoom = openDrawingRoom): Promise<DrawnAnew> {
  if (!openings.test(await photo.slice(0, 8).text())) return null;
  return askRoom<DrawnAnew>(photo, { openRoom, signal });
}
