import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

const root = new URL('../../../', import.meta.url).pathname;
const program = ['--import', 'tsx', join(root, 'src/cli/decode.ts')];
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tellstamp-decode-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...given: string[]) =>
  spawnSync(process.execPath, [...program, ...given], { cwd: root, encoding: 'utf8' });
const write = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

/** A maker that is on file nowhere else, in the form that the design prints. */
const file = {
  format: 1,
  maker: 'Somebody Else',
  aliases: [],
  sources: [],
  plants: [{ code: 'KV', place: 'AT', used: ['1988', '2003'] }],
  codeSystems: [
    {
      id: 'month-year',
      used: ['1990-01', '2006-12'],
      layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
      examples: [{ code: 'KV0915', reads: '1995-01, AT' }],
    },
  ],
};

test('--json --maker FILE reads codes under that file alone, in the form of the contract', () => {
  const path = write('sound.json', JSON.stringify(file));
  const output = execFileSync(
    process.execPath,
    [...program, '--json', '--maker', path, 'KV0915', 'KVO9I5', 'KV9915', '8411'],
    {
      cwd: root,
      encoding: 'utf8',
    },
  );
  const decoded = JSON.parse(output) as {
    code: string;
    readings: Record<string, unknown>[];
    nearest: { text: string }[];
  }[];
  expect(decoded.map(({ code, readings }) => [code, readings.map(({ reads }) => reads)])).toEqual([
    ['KV0915', ['1995-01, AT']],
    ['KVO9I5', ['1995-01, AT']],
    ['KV9915', []],
    ['8411', []],
  ]);
  expect(decoded[0]?.readings[0]).toMatchObject({
    text: 'KV0915',
    system: { maker: 'Somebody Else', id: 'month-year' },
    span: { from: '1995-01-01', to: '1995-01-31', precision: 'month' },
    place: 'AT',
    places: ['AT'],
  });
  expect(decoded[2]?.nearest[0]?.text).toBe('KV0915');
}, 60_000);

test('an invented file that is named reads, and people get a table that calls it invented', () => {
  const { stdout, status } = run('--maker', join(root, 'src/maker/built-in/tessaro-vell.json'), 'M3-214/98');
  expect(status).toBe(0);
  expect(stdout).toContain('1998-08-02, IT');
  expect(stdout).toContain('Tessaro Vell (invented) / day-of-year');
}, 60_000);

test('without a file the families answer, and no invented maker does', () => {
  const { stdout, status } = run('--json', 'KV0915', 'M3-214/98', 'A2 417', '854');
  expect(status).toBe(0);
  const decoded = JSON.parse(stdout) as { code: string; readings: { system: { maker: string | null } }[] }[];
  const systems = decoded.flatMap(({ readings }) => readings.map(({ system }) => system.maker));
  expect(new Set(systems)).toEqual(new Set([null]));
  expect(stdout).not.toMatch(/Ondrasse|Calderwick|Tessaro/);
}, 60_000);

test.each([
  [
    'a missing file',
    () => ['--maker', join(folder, 'missing.json'), 'KV0915'],
    /missing\.json: there is no file of this name/,
  ],
  [
    'a file that is not JSON',
    () => ['--maker', write('cut.json', '{"format":1,'), 'KV0915'],
    /cut\.json: the maker file is refused\n.*not JSON/,
  ],
  [
    'a file whose example does not decode as it says',
    () => {
      const [system] = file.codeSystems;
      const wrong = { ...file, codeSystems: [{ ...system, examples: [{ code: 'KV0915', reads: '1995-02' }] }] };
      return ['--json', '--maker', write('wrong.json', JSON.stringify(wrong, null, 1)), 'KV0915'];
    },
    /codeSystems\[0\]\.examples\[0\]: line \d+: "KV0915" reads 1995-01, AT, but the example says "1995-02"/,
  ],
  ['no code', () => [], /no code given\nusage: /],
  ['an unknown option', () => ['--colour', 'KV0915'], /--colour/],
])(
  '%s ends with exit code 2 and the reason on stderr',
  (_, given, reason) => {
    const { status, stderr, stdout } = run(...given());
    expect(stderr).toMatch(reason);
    expect([status, stdout]).toEqual([2, '']);
  },
  60_000,
);
