import type { HandMark, HandMeasure } from '../../photo';
import type { Problem } from '../../problem';

/** What goes to the worker that measures: first the photo's bytes, then marks on it as often as they change. */
export type MeasuringRequest = { kind: 'photo'; bytes: ArrayBuffer } | { kind: 'marks'; id: number; marks: HandMark[] };

/** What each mark measures, in their order; or why nothing could be measured. */
export type MeasuringAnswer =
  | { id: number; measures: HandMeasure[][]; problem?: never }
  | { id: number; measures?: never; problem: Problem };
