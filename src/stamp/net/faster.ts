import { reported } from '../../problem';
import type { NetSession } from './nets';

/** Both nets as one runtime runs them. */
export interface NetPair {
  finder: NetSession;
  recogniser: NetSession;
}

/** The same nets on a faster machine that can go away; `lost` settles, with the reason in words, when it does. */
export interface FasterNets extends NetPair {
  lost: Promise<string>;
}

/**
 * Largest difference between two runtimes' numbers (logits, logarithms of distances) that counts as the same answer:
 * it moves a probability by at most half a hundredth, a distance by two hundredths of itself.
 */
export const mostDifference = 0.02;

/** What runs the nets now, for tests and the console. */
export interface NetsWithFaster extends NetPair {
  usesFaster(): boolean;
}

/**
 * Runs nets on the faster runtime once it is there, and trusts it only as far as it was seen to agree: each net's
 * first answer is computed both ways, and the plain one counts. A failure, a lost device, a number that is not finite
 * or an answer that differs ends its use for good (`told` hears why, once), and the same input is run plainly, so no
 * photo is lost. `opening` may settle long after the first photo; null means that there is no faster runtime.
 */
export function netsWithFaster(
  plain: NetPair,
  opening: Promise<FasterNets | null>,
  told: (why: string) => void,
): NetsWithFaster {
  let faster: FasterNets | null = null;
  const end = (why: string): void => {
    if (faster === null) return;
    faster = null;
    told(why);
  };
  opening.then(
    (opened) => {
      faster = opened;
      opened?.lost.then(end);
    },
    (error: unknown) => told(reported(error).said),
  );
  const session = (net: keyof NetPair): NetSession => {
    let agreed = false;
    return {
      async run(input, shape) {
        const used = faster;
        if (used === null) return plain[net].run(input, shape);
        try {
          const answer = await Promise.race([used[net].run(input, shape), used.lost.then(refuse)]);
          // Lost while it ran: the numbers may be anything.
          if (faster === null) return await plain[net].run(input, shape);
          if (!isFiniteAnswer(answer)) throw new Error('an answer is not finite');
          if (agreed) return answer;
          const expected = await plain[net].run(input, shape);
          const difference = differenceOf(answer, expected);
          if (!(difference <= mostDifference)) throw new Error(`the ${net}'s answers differ by ${difference}`);
          agreed = true;
          return expected;
        } catch (error) {
          end(reported(error).said);
          return plain[net].run(input, shape);
        }
      },
    };
  };
  return { finder: session('finder'), recogniser: session('recogniser'), usesFaster: () => faster !== null };
}

type Answer = Awaited<ReturnType<NetSession['run']>>;

const refuse = (why: string): never => {
  throw new Error(why);
};

function isFiniteAnswer({ data }: Answer): boolean {
  for (let at = 0; at < data.length; at++) if (!Number.isFinite(data[at])) return false;
  return true;
}

/** The largest difference between two numbers of the same place; infinite where the shapes differ. */
function differenceOf(one: Answer, other: Answer): number {
  if (one.shape.join() !== other.shape.join() || one.data.length !== other.data.length) return Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let at = 0; at < one.data.length; at++) largest = Math.max(largest, Math.abs(one.data[at]! - other.data[at]!));
  return largest;
}
