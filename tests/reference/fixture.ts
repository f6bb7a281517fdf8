import { existsSync, readFileSync } from 'node:fs';
import { describe, it } from 'vitest';

/** A file of the shared folder beside the checkout, or null where it is absent (its tests are then skipped). */
export function readFixture<T>(path: string): T | null {
  const file = new URL(`../../../shared/${path}`, import.meta.url);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : null;
}

/**
 * A suite over a file of the shared folder. Without the file its one test is skipped and `suite` is not called: a skipped
 * suite's body would be run all the same, to collect its tests.
 */
export function describeWithFixture<T>(title: string, path: string, suite: (fixture: T) => void): void {
  const fixture = readFixture<T>(path);
  if (fixture) describe(title, () => suite(fixture));
  else describe(title, () => it.skip(`needs ../shared/${path}`, () => {}));
}
