import { type ChildProcess, fork } from 'node:child_process';
import { resolve } from 'node:path';

/** Test files to run, with one file of the program changed or none. */
export interface Job {
  id: number;
  change: { path: string; code: string } | null;
  tests: string[];
}
export interface Result {
  id: number;
  /** Test files in which something failed. */
  failed: string[];
  /** What broke outside any test. */
  broken: string[];
  /** Milliseconds per test file. */
  times: Record<string, number>;
  ms: number;
}

/** Loops are counted; this is for what no counter sees, such as a text that grows without end. Own limit, no source. */
const longestMs = 180_000;

/**
 * Runs all jobs in `count` processes of their own; one that hangs or dies is replaced and its job is told as broken.
 * Once `over` says so, no further job is begun.
 */
export async function runJobs(
  jobs: Job[],
  count: number,
  told: (result: Result, job: Job) => void,
  over: () => boolean = () => false,
): Promise<void> {
  const waiting = [...jobs];
  await Promise.all(
    Array.from({ length: Math.min(count, jobs.length) }, async () => {
      let worker: ChildProcess | null = null;
      for (let job = waiting.shift(); job && !over(); job = waiting.shift()) {
        worker ??= await started();
        const result = await answered(worker, job);
        if (result.broken.includes(gone)) {
          end(worker);
          worker = null;
        }
        told(result, job);
      }
      if (worker) end(worker);
    }),
  );
}

/** Said of a run whose process gave no answer in time. */
export const gone = 'the tests hung or their process died';

/** Whether a run says nothing of the change: no test failed, but the run itself broke, as on a machine that is too busy. */
export const isVoid = ({ failed, broken }: Result): boolean =>
  failed.length === 0 && broken.some((what) => what === gone || what.includes('[vitest-pool]'));

function started(): Promise<ChildProcess> {
  const worker = fork(resolve(import.meta.dirname, 'worker.ts'), {
    execArgv: ['--import', 'tsx'],
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    // A group of its own, so that what it started ends with it.
    detached: true,
  });
  return new Promise((done, failed) => {
    worker.once('message', () => done(worker));
    worker.once('exit', (code) => failed(new Error(`the process that runs tests ended with ${code}`)));
  });
}

function answered(worker: ChildProcess, job: Job): Promise<Result> {
  return new Promise((done) => {
    const finish = (result: Result) => {
      clearTimeout(timer);
      worker.removeAllListeners('message').removeAllListeners('exit');
      done(result);
    };
    const lost = () => finish({ id: job.id, failed: [], broken: [gone], times: {}, ms: longestMs });
    const timer = setTimeout(lost, longestMs);
    worker.once('message', (result) => finish(result as Result)).once('exit', lost);
    worker.send(job);
  });
}

function end(worker: ChildProcess): void {
  try {
    if (worker.pid !== undefined) process.kill(-worker.pid, 'SIGKILL');
  } catch {
    // It had ended already.
  }
}
