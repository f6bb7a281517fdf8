import { inTime } from './in-time';

/**
 * What is being started, if it is there within so many milliseconds. An engine whose files do not compile says nothing for
 * ever, and each photo would wait for it until the reader itself is given up; what comes too late is closed.
 */
export function startedWithin<T extends { close(): Promise<void> }>(limit: number, starting: Promise<T>): Promise<T> {
  return inTime(limit, starting, `it did not start within ${limit / 1000} s`).catch((error: unknown) => {
    starting.then((late) => late.close()).catch(() => {});
    throw error;
  });
}
