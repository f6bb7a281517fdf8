import { resolve } from 'node:path';
import { createVitest, type TestModule, type TestSpecification } from 'vitest/node';
import { withCountedLoops } from './loops';
import type { Job, Result } from './pool';

const root = resolve(import.meta.dirname, '../..');
const ended: TestModule[] = [];
let changed: { path: string; code: string } | null = null;

/** Runs the test files it is handed, one job after another, with one file of the program changed. */
const vitest = await createVitest(
  {
    config: false,
    root,
    watch: false,
    include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/reference/**/*.test.ts'],
    setupFiles: [resolve(import.meta.dirname, 'setup.ts')],
    isolate: false,
    fileParallelism: false,
    pool: 'forks',
    // What is kept on disk would be the unchanged file.
    fsModuleCache: false,
    bail: 1,
    testTimeout: 60_000,
    // What a run says itself; its result also holds what failed in runs before.
    reporters: [
      {
        onTestModuleEnd(module: TestModule) {
          ended.push(module);
        },
      },
    ],
    // The files come in the order of the job.
    sequence: {
      sequencer: class {
        sort = (files: TestSpecification[]) => files;
        shard = (files: TestSpecification[]) => files;
      } as never,
    },
  },
  {
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    server: { watch: null },
    plugins: [
      {
        name: 'change-one-file',
        enforce: 'pre',
        transform(code, id) {
          const path = id.startsWith(`${root}/src/`) && /\.tsx?$/.test(id) ? id.slice(root.length + 1) : null;
          if (path === null) return;
          return { code: withCountedLoops(path, changed?.path === path ? changed.code : code), map: null };
        },
      },
    ],
  },
);
const project = vitest.getRootProject();

async function run(job: Job): Promise<Result> {
  changed = job.change;
  if (changed) vitest.invalidateFile(resolve(root, changed.path));
  const start = performance.now();
  const specs = job.tests.map((path) => project.createSpecification(resolve(root, path)));
  vitest.state.clearErrors();
  ended.length = 0;
  const { unhandledErrors } = await vitest.runTestSpecifications(specs);
  const pathOf = (module: TestModule) => module.moduleId.slice(root.length + 1);
  const failed = ended.filter((module) => !module.ok()).map(pathOf);
  if (changed) vitest.invalidateFile(resolve(root, changed.path));
  const broken = unhandledErrors.map((error) => String((error as { message?: unknown }).message ?? error));
  const times = ended.map((module) => [pathOf(module), module.diagnostic().duration] as const);
  changed = null;
  return { id: job.id, failed, broken, times: Object.fromEntries(times), ms: performance.now() - start };
}

process.on('message', (job: Job) => {
  run(job).then(
    (result) => process.send?.(result),
    (error: unknown) =>
      process.send?.({ id: job.id, failed: [], broken: [String(error)], times: {}, ms: 0 } satisfies Result),
  );
});
process.on('disconnect', () => process.exit(0));
process.send?.('ready');
