/** Does one piece of work after the other, in the order in which they are handed in; one that fails holds up none. */
export function workInTurn(): <T>(work: () => T | Promise<T>) => Promise<T> {
  let queue: Promise<unknown> = Promise.resolve();
  return (work) => {
    const next = queue.then(work, work);
    queue = next.catch(() => {});
    return next;
  };
}
