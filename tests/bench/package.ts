import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { unzipSync } from 'fflate';

/*
 * What the packed extension for Chrome takes, part by part, as it lies compressed in its file: today's, which `npm run zip`
 * wrote, beside that of another commit, which is built here in a folder of its own: `npm run bench -- package --commit=ID`.
 */
export const onlyWhenNamed = true;

const root = fileURLToPath(new URL('../../', import.meta.url));
/** The last commit before the words of screens moved into languages, and the rest of the house after them. */
const former = 'd3532cbc~1';

const parts: readonly [name: string, is: (path: string) => boolean][] = [
  ['nets', (path) => path.startsWith('models/')],
  ['WASM', (path) => /\.wasm(\.delta)?$/.test(path)],
  ['print reader’s language', (path) => /traineddata/.test(path)],
  ['scripts', (path) => /\.m?js$/.test(path)],
  ['all else', () => true],
];

/** Bytes of each part of a packed file, and of the whole. */
function sizesOf(folder: string): Map<string, number> {
  const name = readdirSync(join(folder, '.output')).find((file) => /-chrome\.zip$/.test(file));
  if (name === undefined) throw new Error(`there is no packed file in ${folder}: run "npm run zip" first`);
  const packed = readFileSync(join(folder, '.output', name));
  const sizes = new Map(parts.map(([part]) => [part, 0]));
  unzipSync(packed, {
    filter: ({ name: path, size }) => {
      const [part] = parts.find(([, is]) => is(path)) as (typeof parts)[number];
      sizes.set(part, (sizes.get(part) ?? 0) + size);
      return false;
    },
  });
  return sizes.set('whole file', packed.length);
}

function sizesAt(commit: string): Map<string, number> {
  const folder = mkdtempSync(join(tmpdir(), 'tellstamp-package-'));
  const run = (command: string, ...rest: string[]) =>
    execFileSync(command, rest, { cwd: folder, stdio: ['ignore', 'ignore', 'inherit'] });
  try {
    execFileSync('git', ['clone', '--quiet', '--shared', root, folder]);
    run('git', 'checkout', '--quiet', commit);
    run('npm', 'ci', '--silent');
    run('npx', 'wxt', 'zip', '-b', 'chrome', '--mv3');
    return sizesOf(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export async function bench(): Promise<void> {
  const given = process.argv.find((argument) => argument.startsWith('--commit='))?.slice('--commit='.length) ?? former;
  const commit = execFileSync('git', ['rev-parse', '--short=8', given], { cwd: root, encoding: 'utf8' }).trim();
  const now = sizesOf(root);
  const then = sizesAt(commit);
  const kb = (bytes: number) => `${Math.round(bytes / 1000).toLocaleString('en')} kB`;
  console.log(`| part | at ${commit} | today | share |\n| --- | --- | --- | --- |`);
  for (const [part, bytes] of now) {
    const before = then.get(part) ?? 0;
    console.log(`| ${part} | ${kb(before)} | ${kb(bytes)} | ${((bytes / before) * 100).toFixed(1)} % |`);
  }
}
