/**
 * What is being started, if it is there within so many milliseconds. An engine whose files do not compile says nothing for
 * ever, and whoever waits for it would never answer; what comes too late is closed.
 */
export function startedWithin<T extends { close(): Promise<void> }>(limit: number, starting: Promise<T>): Promise<T> {
  return new Promise((settle, fail) => {
    const timer = setTimeout(() => {
      fail(new Error(`it did not start within ${limit / 1000} s`));
      starting.then((late) => late.close()).catch(() => {});
    }, limit);
    starting.then(settle, fail).finally(() => clearTimeout(timer));
  });
}
