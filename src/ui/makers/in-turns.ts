interface Turns {
  signal: AbortSignal;
  /** Milliseconds that one turn may take: less than a frame, so that typing and scrolling are not held up. */
  longest?: number;
  /** A clock, and a pause until the page has had its turn. */
  now?: () => number;
  pause?: () => Promise<void>;
}

const nextTask = () => new Promise<void>((resolve) => setTimeout(resolve));

/** Runs a long piece of work turn by turn and gives its result; null when it was ended before. */
export async function inTurns<Result>(
  work: Iterator<unknown, Result>,
  { signal, longest = 10, now = () => performance.now(), pause = nextTask }: Turns,
): Promise<Result | null> {
  for (;;) {
    await pause();
    if (signal.aborted) return null;
    const started = now();
    do {
      const step = work.next();
      if (step.done) return step.value;
    } while (now() - started < longest);
  }
}
