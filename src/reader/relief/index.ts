import type { LightSide } from '../../photo';
import { fail, problem, type Result } from '../../problem';

/** A photo, and the side that its surface is looked at from; null for its light taken out alone. */
export interface ReliefRequest {
  bytes: ArrayBuffer;
  side: LightSide | null;
}
export type ReliefAnswer = Result<Blob>;

const openReliefRoom = (): Worker =>
  new Worker(new URL('./relief-room.ts', import.meta.url), { type: 'module', name: 'relief' });

/** The photo's relief view as a picture of the same shape, worked out in a worker that lives for it; `signal` ends it. */
export function drawRelief(request: ReliefRequest, signal: AbortSignal): Promise<ReliefAnswer> {
  const room = openReliefRoom();
  signal.addEventListener('abort', () => room.terminate(), { once: true });
  return new Promise<ReliefAnswer>((settle) => {
    room.addEventListener('message', ({ data }: MessageEvent<ReliefAnswer>) => settle(data));
    room.addEventListener('error', ({ message }) =>
      settle(fail(problem('measuring-failed', 'photo', { said: message }))),
    );
    room.postMessage(request, [request.bytes]);
  }).finally(() => room.terminate());
}
