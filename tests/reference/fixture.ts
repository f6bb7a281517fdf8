import { existsSync, readFileSync } from 'node:fs';

/** A file of the shared folder beside the checkout, or null where it is absent (its tests are then skipped). */
export function readFixture<T>(path: string): T | null {
  const file = new URL(`../../../shared/${path}`, import.meta.url);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as T) : null;
}
