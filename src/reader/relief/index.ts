import type { LightSide } from '../../photo';
import { fail, problem, type Result, reported } from '../../problem';
import { askRoom } from '../ask-room';

/** A photo, and the side that its surface is looked at from; null for its light taken out alone. */
export interface ReliefRequest {
  bytes: ArrayBuffer;
  side: LightSide | null;
}
export type ReliefAnswer = Result<Blob>;

const openReliefRoom = (): Worker =>
  new Worker(new URL('./relief-room.ts', import.meta.url), { type: 'module', name: 'relief' });

/**
 * The photo's relief view as a picture of the same shape, worked out in a worker that lives for it; null when `signal`
 * ended it before.
 */
export const drawRelief = (request: ReliefRequest, signal: AbortSignal): Promise<ReliefAnswer | null> =>
  askRoom<ReliefAnswer>(request, { openRoom: openReliefRoom, signal, transfer: [request.bytes] }).catch(
    (error: unknown) => fail(problem('measuring-failed', 'photo', reported(error))),
  );
