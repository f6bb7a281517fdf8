import type { Result } from '../problem';

/** What is done at a desk, with what it comes to. */
type Work<D, T> = (desk: D) => Promise<Result<T>>;

/** A place that can be opened and closed. */
interface Place {
  open(): void;
  close(): void;
}

interface Options<D extends Place> {
  create(): D;
  /** Most desks at once, at least 1. */
  most: number;
  /** Whether a problem is a desk's own end, which the same work at another desk need not come to. */
  isEnd(code: string): boolean;
  /** Calls after a while in which a further desk stood idle; gives back what ends that. */
  afterIdle(call: () => void): () => void;
}

/**
 * Work in the order in which it is handed in, at as many desks at once as there are. Further desks are opened when
 * they are needed and closed when they stand idle. Where one of them ends, what it was at is done at the first, and from
 * then on all else: a machine that could not bear two is not asked again.
 */
export function shareDesks<D extends Place>({ create, most, isEnd, afterIdle }: Options<D>) {
  const first = create();
  let further: D[] = [];
  let mostNow = most;
  const busy = new Set<D>();
  const waiting: { at: 'any' | 'first' | 'alone'; begin: (desk: D) => Promise<void> }[] = [];
  let endIdle = () => {};

  const closeFurther = () => {
    for (const desk of further) desk.close();
    further = [];
  };
  const freeDesk = (): D | null => {
    const free = [first, ...further].find((desk) => !busy.has(desk));
    if (free !== undefined) return free;
    if (1 + further.length >= mostNow) return null;
    const opened = create();
    further.push(opened);
    return opened;
  };
  const assign = () => {
    endIdle();
    for (let next = waiting[0]; next !== undefined; next = waiting[0]) {
      const desk = next.at === 'any' ? freeDesk() : busy.has(first) ? null : first;
      if (desk === null || (next.at === 'alone' && busy.size > 0)) return;
      waiting.shift();
      busy.add(desk);
      next.begin(desk).finally(() => {
        busy.delete(desk);
        assign();
      });
      if (next.at === 'alone') return;
    }
    if (further.length > 0 && busy.size === 0) endIdle = afterIdle(closeFurther);
  };

  return {
    do<T>(work: Work<D, T>): Promise<Result<T>> {
      return new Promise((resolve, reject) => {
        const begin = (desk: D) => tried(desk).catch(reject);
        const tried = async (desk: D): Promise<void> => {
          const outcome = await work(desk);
          if (desk === first || outcome.ok || !isEnd(outcome.problem.code)) return resolve(outcome);
          mostNow = 1;
          desk.close();
          further = further.filter((other) => other !== desk);
          waiting.unshift({ at: 'first', begin });
        };
        waiting.push({ at: 'any', begin });
        assign();
      });
    },
    /** After all that was handed in before: every desk is closed, and the first opened anew. */
    renew(): Promise<void> {
      return new Promise((resolve, reject) => {
        const renewed = async (desk: D): Promise<void> => {
          closeFurther();
          desk.close();
          desk.open();
        };
        waiting.push({ at: 'alone', begin: (desk) => renewed(desk).then(resolve, reject) });
        assign();
      });
    },
  };
}
