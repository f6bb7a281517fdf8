import type { Problem } from '../../problem';
import type { Adjustment, PhotoView } from '../protocol';

/** What goes to the reader's worker. `files` is the extension's own address: a worker has no extension API. */
export type ReaderRequest =
  | { kind: 'start'; files: string }
  | { kind: 'read'; id: number; photoId: string; base64: string; adjustment: Adjustment };

export type ReaderAnswer =
  | { id: number; view: PhotoView; problem?: never }
  | { id: number; view: null; problem: Problem };
