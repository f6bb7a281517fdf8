import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, extname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../../..');
const source = join(root, 'src');

/** A folder may import folders of a lower row, and those of its own row that stand to its left. */
const rows = [
  ['problem', 'source', 'span', 'place'],
  ['photo', 'listing', 'stamp', 'code', 'mark'],
  ['maker', 'claim'],
  ['evidence'],
  ['check'],
  ['question'],
  ['case'],
  ['words'],
  ['watch'],
  ['bridge', 'ui'],
  ['cli', 'packaging'],
];
const order = rows.flat();
const core = order.slice(0, order.indexOf('bridge'));

/** Schemas and types are the shared words: every folder may use them. */
const isTypesFile = (path: string) => /(^|\/)(types|schema|[a-z-]+-types)(\.ts)?$/.test(path);

interface Import {
  file: string;
  folder: string;
  target: string;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return name === 'training' ? [] : sourceFiles(path);
    return ['.ts', '.tsx'].includes(extname(name)) ? [path] : [];
  });
}

const files = sourceFiles(source);
const pattern = /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'|import\(\s*'([^']+)'\s*\)/g;
const imports: Import[] = files.flatMap((file) =>
  [...readFileSync(file, 'utf8').matchAll(pattern)].map((match) => ({
    file: relative(root, file),
    folder: relative(source, file).split('/')[0] ?? '',
    target: (match[2] ?? match[3]) as string,
  })),
);

const crossing = imports.flatMap((entry) => {
  if (!entry.target.startsWith('.')) return [];
  const path = relative(source, resolve(dirname(join(root, entry.file)), entry.target));
  const folder = path.split('/')[0] ?? '';
  return folder === entry.folder || folder.startsWith('..') ? [] : [{ ...entry, path, to: folder }];
});

describe('layers', () => {
  it('finds the imports it is to judge', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(crossing.length).toBeGreaterThan(20);
  });

  it('lets imports run downwards only', () => {
    const upward = crossing.filter(
      ({ folder, to, path }) => order.indexOf(to) > order.indexOf(folder) && !isTypesFile(path),
    );
    expect(upward.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  it('lets a folder be entered by its door or its types only', () => {
    const sideways = crossing.filter(({ path, to }) => path !== to && path !== `${to}/index.ts` && !isTypesFile(path));
    const allowed = sideways.filter(({ folder, path }) => !isSecondDoor(folder, path));
    expect(allowed.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
  });

  it('keeps browser-extension and screen libraries out of the core', () => {
    const forbidden = imports.filter(
      ({ folder, target }) =>
        core.includes(folder) && /^(wxt|preact|@wxt-dev|webextension-polyfill|node:)/.test(target),
    );
    expect(forbidden.map(({ file, target }) => `${file} imports ${target}`)).toEqual([]);
    const calls = files.filter(
      (file) =>
        core.includes(relative(source, file).split('/')[0] ?? '') &&
        /\b(chrome|browser)\.(?!exe)\w+/.test(codeOf(file)),
    );
    expect(calls.map((file) => relative(root, file))).toEqual([]);
  });
});

/**
 * Folders with a second door, for whom: words are read in the page and again by claims; generated files are made by
 * commands alone; the watch list compares addresses as the page does; and some folders have a door for each place (page, worker, panel) that their parts run in.
 */
function isSecondDoor(folder: string, path: string): boolean {
  if (path === 'listing/text') return folder === 'claim';
  if (path === 'listing/tracking') return folder === 'watch';
  if (path === 'words/checks-document' || path === 'maker/json-schema') return folder === 'cli';
  return (
    ['cli', 'ui', 'bridge'].includes(folder) && /^(stamp|listing|watch|bridge)\/[a-z-]+(\/index)?(\.ts)?$/.test(path)
  );
}

/** The file without comments, so that a sentence about the browser is not taken for a call. */
function codeOf(file: string): string {
  return readFileSync(file, 'utf8')
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '');
}
