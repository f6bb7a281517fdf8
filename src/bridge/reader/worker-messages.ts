import type { Problem } from '../../problem';
import type { Adjustment, PhotoView } from '../protocol';
import type { NetRuntime } from './engines';
import type { WantedAdapter } from './graphics';

/**
 * What goes to the reader's worker. `files` is the extension's own address: a worker has no extension API. `adapter`
 * is left out by the product; its tests name a software graphics card, as machines without a real one have.
 */
export type ReaderRequest =
  | { kind: 'start'; files: string; adapter?: WantedAdapter }
  | { kind: 'read'; id: number; photoId: string; base64: string; adjustment: Adjustment };

export type ReaderAnswer =
  | { id: number; view: PhotoView; runtime: NetRuntime; problem?: never }
  | { id: number; view: null; problem: Problem };
