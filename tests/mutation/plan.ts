import type { Answer, Order } from './order';
import { whole } from './order';
import type { Tester } from './pool';

/** What a test file does when nothing is changed. */
export interface Known {
  file: string;
  /** The full names of all its tests. */
  all: string[];
  ms: number;
  /** Milliseconds of each test that is used, by its full name. */
  times: Record<string, number>;
  turns: number;
  /** The changes whose places its reading and its hooks reach, and those of each test, also when it runs a second time. */
  whole: ReadonlySet<number>;
  tests: ReadonlyMap<string, ReadonlySet<number>>;
  /** The changes whose places are reached the first time only: what they make is kept. */
  once: ReadonlySet<number>;
}

/** Tests of one file, and what they take unchanged. */
export interface Step {
  file: string;
  tests: string[];
  ms: number;
}

/** More loop turns than fifty times what the unchanged tests need are taken for an endless loop. Own limit, no source. */
export const turnsFor = (known: Known | undefined): number => (known ? known.turns * 50 + 1_000_000 : 50_000_000);
/** Twenty times what the unchanged tests take, and a minute: then the process counts as hung. Own limit, no source. */
export const longestFor = (ms: number): number => ms * 20 + 60_000;

/**
 * A file's tests, run twice without a change, and what each reaches; or why they are not used. A test that takes more
 * than so many milliseconds is left out.
 */
export async function learn(tester: Tester, file: string, most: number): Promise<Known | string> {
  const order: Order = { file, tests: null, known: null, change: 0, anew: false, turns: 1e12, stop: false };
  const first = await tester.run(order, 400_000);
  const all = Object.keys(first.times);
  const tests = all.filter((name) => (first.times[name] as number) <= most);
  const bad = first.failed.length > 0 || first.gone === true;
  const again = bad ? first : await tester.run({ ...order, tests, known: all }, 400_000);
  if (again.failed.length > 0 || again.gone) return again.gone ? 'hung' : `${again.failed[0]}: ${again.why}`;
  const kept = (name: string): number[] => {
    const numbers = (answer: Answer) =>
      name === whole ? answer.reached.whole : [...(answer.reached.tests[name] ?? []), ...answer.reached.whole];
    const second = new Set(numbers(again));
    return numbers(first).filter((id) => !second.has(id));
  };
  return {
    file,
    all,
    ms: again.ms,
    times: again.times,
    turns: again.turns,
    whole: new Set(again.reached.whole),
    tests: new Map(Object.entries(again.reached.tests).map(([name, ids]) => [name, new Set(ids)])),
    once: new Set([whole, ...tests].flatMap(kept)),
  };
}

/** The tests that reach a change's place, out of the first files as many as take so many milliseconds; what takes least runs first. */
export function stepsFor(change: number, files: readonly Known[], most: number): Step[] {
  return within(files, most, (known, test) => known.whole.has(change) || known.tests.get(test)?.has(change) === true);
}

/** All tests of the files, as many as take so many milliseconds: for what is made once, and used wherever. */
export const allSteps = (files: readonly Known[], most: number): Step[] => within(files, most, () => true);

function within(files: readonly Known[], most: number, takes: (known: Known, test: string) => boolean): Step[] {
  let sum = 0;
  const steps: Step[] = [];
  for (const known of files) {
    const tests: string[] = [];
    let ms = 0;
    for (const [test, own] of Object.entries(known.times)) {
      if (!takes(known, test) || sum + own > most) continue;
      tests.push(test);
      sum += own;
      ms += own;
    }
    if (tests.length > 0) steps.push({ file: known.file, tests, ms });
  }
  return steps.sort((a, b) => a.ms - b.ms);
}
