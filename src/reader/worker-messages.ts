import type { PhotoView } from '../message/protocol';
import type { Adjustment } from '../photo/adjustment-types';
import type { Problem } from '../problem';
import type { NetRuntime } from './engines';
import type { WantedAdapter } from './graphics';

/**
 * What goes to the reader's worker. `files` is the extension's own address: a worker has no extension API. `life` names a
 * lock that the worker holds as long as it lives. `file` is the address of a photo's bytes inside the extension. `adapter`
 * is left out by the product; its tests name a software graphics card, as machines without a real one have.
 */
export type ReaderRequest =
  | { kind: 'start'; files: string; life?: string; adapter?: WantedAdapter }
  | { kind: 'glance'; id: number; photoId: string; file: string; closer: boolean }
  | { kind: 'read'; id: number; photoId: string; file: string; adjustment: Adjustment };

export type ReaderAnswer =
  | { id: number; view: PhotoView; runtime: NetRuntime; problem?: never }
  | { id: number; view: null; problem: Problem };

/** How likely the photo shows a stamp, 0 to 1. */
export type GlanceAnswer = { id: number; likelihood: number; problem?: never } | { id: number; problem: Problem };

/** The worker holds its lock from here on: who gets it next knows that the worker is gone. */
export interface LifeBegun {
  alive: true;
}
