/** As much of a worker as is used here. */
export type Room = Pick<Worker, 'addEventListener' | 'postMessage' | 'terminate'>;

interface Asking {
  openRoom: () => Room;
  signal: AbortSignal;
  transfer?: Transferable[];
}

/**
 * The one answer of a worker that lives for it; null when it was ended before: the worker is then gone. Throws what the
 * browser says where there is no worker, or it fails.
 */
export async function askRoom<Answer>(
  request: unknown,
  { openRoom, signal, transfer = [] }: Asking,
): Promise<Answer | null> {
  if (signal.aborted) return null;
  const room = openRoom();
  try {
    return await new Promise<Answer | null>((resolve, reject) => {
      room.addEventListener('message', (({ data }: MessageEvent<Answer>) => resolve(data)) as EventListener);
      room.addEventListener('error', ((event: ErrorEvent) => {
        event.preventDefault();
        reject(new Error(event.message || 'the worker did not start'));
      }) as EventListener);
      room.addEventListener('messageerror', () => reject(new Error('the answer could not be handed over')));
      signal.addEventListener('abort', () => resolve(null), { once: true });
      room.postMessage(request, transfer);
    });
  } finally {
    room.terminate();
  }
}
