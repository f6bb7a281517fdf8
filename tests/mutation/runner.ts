import { readFileSync } from 'node:fs';
import { request } from 'node:http';
import { resolve } from 'node:path';
import { type RunnerTestCase, type RunnerTestFile, type RunnerTestSuite, TestRunner } from 'vitest';
import { builtinEnvironments } from 'vitest/runtime';
import { type Answer, type Order, whole } from './order';

const root = resolve(import.meta.dirname, '../..');
const address = process.env.MUTATION_ADDRESS as string;

let order: Order | null = null;
let answer = blank();
let reached: Uint8Array = new Uint8Array(Number(process.env.MUTATION_CHANGES) + 1);
let turns = 0;
let startedAt = 0;
let leave: () => Promise<void> = async () => {};

/** Reached places and turns are counted by the program itself: see `withSwitches` and `withCountedLoops`. */
Object.assign(globalThis, {
  on$: (id: number): boolean => {
    reached[id] = 1;
    return order !== null && order.change === id;
  },
  turn$: (): void => {
    turns += 1;
    if (order !== null && turns > order.turns) throw new Error('a loop does not end');
  },
});
for (const event of ['unhandledRejection', 'uncaughtException'] as const)
  process.on(event, (error: unknown) => fail(whole, error));

function blank(): Answer {
  return { failed: [], why: '', ms: 0, times: {}, turns: 0, reached: { whole: [], tests: {} } };
}

function fail(name: string, error: unknown): void {
  answer.failed.push(name);
  const message = (error as { message?: unknown } | undefined)?.message ?? error;
  if (answer.why === '') answer.why = String(message).slice(0, 200);
}

/** The numbers reached since the last call, and none from now on. */
function reachedSince(): number[] {
  const numbers: number[] = [];
  for (let id = 1; id < reached.length; id++) if (reached[id] === 1) numbers.push(id);
  reached = new Uint8Array(reached.length);
  return numbers;
}

function ask(body: unknown): Promise<Order | null> {
  return new Promise((done, failed) => {
    const asked = request(address, { method: 'POST', agent: false }, (response) => {
      let text = '';
      response.setEncoding('utf8');
      response.on('data', (part: string) => {
        text += part;
      });
      response.on('end', () => done(JSON.parse(text) as Order | null));
    });
    asked.on('error', failed);
    asked.end(JSON.stringify(body));
  });
}

/** What vitest 5.1 keeps with its runner: the files that it is going through, and the modules that were read. */
interface Inside {
  workerState: {
    ctx: { files: { filepath: string }[] };
    evaluatedModules: {
      idToModuleMap: Map<
        string,
        { promise: unknown; exports: unknown; evaluated: boolean; importers: { clear: () => void } }
      >;
    };
  };
}

/**
 * Vitest's own runner, which takes one order after another in one process: modules are read once, and each order adds a
 * file to the list that vitest is going through.
 */
export default class OrderedRunner extends TestRunner {
  private readonly worker = (this as unknown as Inside).workerState;

  override async onBeforeRunSuite(suite: RunnerTestSuite): Promise<void> {
    if (!holdsChosen(suite)) suite.mode = 'skip';
    await super.onBeforeRunSuite(suite);
  }

  override async onBeforeRunTask(test: RunnerTestCase): Promise<void> {
    answer.turns = Math.max(answer.turns, turns);
    answer.reached.whole.push(...reachedSince());
    turns = 0;
    if (!isChosen(test) || (order?.stop && answer.failed.length > 0)) test.mode = 'skip';
    await super.onBeforeRunTask(test);
  }

  override onAfterRunTask(test: RunnerTestCase): void {
    super.onAfterRunTask(test);
    const name = test.fullTestName;
    answer.turns = Math.max(answer.turns, turns);
    turns = 0;
    answer.times[name] = (answer.times[name] ?? 0) + (test.result?.duration ?? 0);
    answer.reached.tests[name] = [...(answer.reached.tests[name] ?? []), ...reachedSince()];
    if (test.result?.state === 'fail') fail(name, test.result.errors?.[0]);
  }

  override async onAfterRunFiles(files: RunnerTestFile[]): Promise<void> {
    super.onAfterRunFiles(files);
    for (const file of files)
      for (const suite of suitesOf(file)) if (suite.result?.errors?.length) fail(whole, suite.result.errors[0]);
    answer.reached.whole = [...new Set([...answer.reached.whole, ...reachedSince()])];
    answer.ms = performance.now() - startedAt;
    await leave();
    const begins = order === null;
    order = await ask(begins ? null : answer);
    if (order === null) return;
    // What the first file read was read before any order: nobody was told which places that reached.
    if (order.anew || begins) this.forget();
    answer = blank();
    reachedSince();
    turns = 0;
    startedAt = performance.now();
    leave = await entered(resolve(root, order.file));
    this.worker.ctx.files.push({ filepath: resolve(root, order.file) });
  }

  /** Forgets every module of the program and its tests, so that the next file reads them anew. */
  private forget(): void {
    for (const [id, module] of this.worker.evaluatedModules.idToModuleMap) {
      if (!id.includes(root) || id.includes('/node_modules/')) continue;
      module.promise = undefined;
      module.exports = undefined;
      module.evaluated = false;
      module.importers.clear();
    }
  }
}

/** Gives a test file the page that it asks for; vitest itself starts a process of its own for each sort. */
async function entered(file: string): Promise<() => Promise<void>> {
  if (!/^\/\/ @vitest-environment jsdom$/m.test(readFileSync(file, 'utf8'))) return async () => {};
  const page = await builtinEnvironments.jsdom.setup(globalThis, {});
  return async () => page.teardown(globalThis);
}

const isChosen = (test: RunnerTestCase): boolean =>
  order !== null &&
  (order.tests === null ||
    order.tests.includes(test.fullTestName) ||
    order.known?.includes(test.fullTestName) === false);
const holdsChosen = (suite: RunnerTestSuite): boolean =>
  suite.tasks.some((task) => (task.type === 'suite' ? holdsChosen(task) : isChosen(task)));
function* suitesOf(suite: RunnerTestSuite): Generator<RunnerTestSuite> {
  yield suite;
  for (const task of suite.tasks) if (task.type === 'suite') yield* suitesOf(task);
}
