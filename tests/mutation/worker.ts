import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { createVitest } from 'vitest/node';
import { withCountedLoops } from './loops';
import { type Switched, withSwitches } from './switches';

/** A process that runs test files as it is told (`runner.ts`), the program holding all changes that were drawn. */
const root = resolve(import.meta.dirname, '../..');
const changes = JSON.parse(readFileSync(process.env.MUTATION_FILE as string, 'utf8')) as Record<string, Switched[]>;

const vitest = await createVitest(
  {
    config: false,
    root,
    watch: false,
    include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/reference/**/*.test.ts'],
    setupFiles: [resolve(import.meta.dirname, 'setup.ts')],
    runner: resolve(import.meta.dirname, 'runner.ts'),
    isolate: false,
    fileParallelism: false,
    pool: 'forks',
    // What is kept on disk would be the unchanged file.
    fsModuleCache: false,
    // What is kept whole is compared and never written.
    update: 'none',
    testTimeout: 60_000,
    reporters: [{}],
  },
  {
    oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
    server: { watch: null },
    plugins: [
      {
        name: 'hold-all-changes',
        enforce: 'pre',
        transform(code, id) {
          const path = id.startsWith(`${root}/src/`) && /\.tsx?$/.test(id) ? id.slice(root.length + 1) : null;
          if (path === null) return;
          return { code: withCountedLoops(path, withSwitches(path, code, changes[path] ?? [])), map: null };
        },
      },
    ],
  },
);
process.on('disconnect', () => process.exit(0));
const first = vitest.getRootProject().createSpecification(resolve(root, process.env.MUTATION_FIRST as string));
await vitest.runTestSpecifications([first]);
process.exit(0);
