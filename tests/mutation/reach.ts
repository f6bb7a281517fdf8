import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { filesUnder, parseFile } from '../unit/layout/source-files';

const root = resolve(import.meta.dirname, '../..');
const endings = ['', '.ts', '.tsx', '/index.ts'];

/** The repository's file that an import names; null for a package, a file of data or a missing one. */
export function importedFile(from: string, target: string): string | null {
  if (!target.startsWith('.')) return null;
  const path = join(from, '..', target).replaceAll('\\', '/');
  const ending = endings.find((one) => /\.tsx?$/.test(path + one) && existsSync(join(root, path + one)));
  return ending === undefined ? null : path + ending;
}

/** For each file, the files that import it when they run. */
export function importersOf(): Map<string, string[]> {
  const importers = new Map<string, string[]>();
  for (const file of [...filesUnder('src'), ...filesUnder('tests')])
    for (const { target, typesOnly } of parseFile(file).imports) {
      const to = typesOnly ? null : importedFile(file.path, target);
      if (to) importers.set(to, [...(importers.get(to) ?? []), file.path]);
    }
  return importers;
}

/** Test files that compare the whole of what a folder tells with what was looked at before: few changes pass them. */
const keepsWhole = /\/(?:kept|readings)[^/]*\.test\./;

/**
 * The test files that can reach a file: those of its name, what is kept whole of its folder, and then the nearest by
 * imports, among equals those of the same folder. `tests` with what each takes: of equals, what takes less comes first.
 */
export function testsOf(
  file: string,
  importers: Map<string, string[]>,
  tests: ReadonlySet<string> | ReadonlyMap<string, number>,
): string[] {
  const distance = new Map([[file, 0]]);
  for (const [path, far] of distance)
    for (const next of importers.get(path) ?? []) if (!distance.has(next)) distance.set(next, far + 1);
  const name = file
    .replace(/(\/index)?\.ts$/, '')
    .split('/')
    .pop() as string;
  const folder = file.split('/')[1] as string;
  const rank = (path: string) => {
    const own = path.includes(`unit/${folder}/`);
    if (path.includes(`/${name}.test.`)) return 0;
    return own && keepsWhole.test(path) ? 0.5 : (distance.get(path) ?? 0) + (own ? 0 : 0.5);
  };
  const cost = (path: string) => ('get' in tests ? (tests.get(path) ?? 0) : 0);
  return [...distance.keys()].filter((path) => tests.has(path)).sort((a, b) => rank(a) - rank(b) || cost(a) - cost(b));
}

/**
 * Why a test file cannot be used here: one that starts another program (what is changed does not run there), and one
 * that replaces modules (all files share one process).
 */
export function unfit(path: string): string | null {
  const code = readFileSync(join(root, path), 'utf8');
  if (code.includes('node:child_process')) return 'starts a process';
  return /\bvi\.(mock|doMock)\(/.test(code) ? 'replaces modules' : null;
}
