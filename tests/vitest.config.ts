import { defineConfig } from 'vitest/config';

/** `unit` and `reference` need no browser; `browser` and `hostile` drive Chromium with the built extension. */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  test: {
    root: new URL('..', import.meta.url).pathname,
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          include: ['tests/unit/**/*.test.{ts,tsx}', 'tests/reference/**/*.test.ts'],
          // Only a test that hangs is ended: a busy machine is no failure.
          testTimeout: 60_000,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          // A browser on a busy machine takes longer than the second that is given else.
          expect: { poll: { timeout: 20_000 } },
          include: ['tests/browser/**/*.test.ts', 'tests/hostile/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
