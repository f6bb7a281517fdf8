import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readMakerFileText } from '../../../src/maker';

const root = new URL('../../../', import.meta.url).pathname;
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'tellstamp-learn-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...given: string[]) =>
  spawnSync(process.execPath, ['--import', 'tsx', join(root, 'src/cli/learn.ts'), ...given], {
    cwd: root,
    encoding: 'utf8',
  });
const write = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

const codes = `# seen in the shop
KV0915 = 1995-01, BE
HJ1929 = 1999-12, FR
ZM0084 = 2004-08, ES
WQ1012 = 2002-11, US
KV0963 = 1993-06, BE
HJ0052 = 2002-05, FR
`;

test('known codes become a system in a maker file that is accepted', () => {
  const maker = write('maker.json', '{"format":1,"maker":"Ondrasse"}');
  const { stdout, status } = run('--into', maker, '--id', 'learned', write('codes.txt', codes));
  expect(status).toBe(0);
  const result = readMakerFileText(stdout);
  expect(result.ok && result.file.codeSystems.map(({ id, layout, examples }) => [id, layout, examples.length])).toEqual(
    [['learned', [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }], 6]],
  );
}, 60_000);

test('people are told what remains, and which code is wrong', () => {
  const { stdout, status } = run(write('wrong.txt', `${codes}KV0936 = 1991-03, BE\n`));
  expect(status).toBe(0);
  expect(stdout).toMatch(/^One explanation remains\./);
  expect(stdout).toContain('doubted: KV0936 (said to be 1991-03, BE): reads 1996-03, BE');
}, 60_000);

test('codes without a system end with exit code 1, a line that is none with 2', () => {
  const none = run(write('none.txt', 'KV0915 = 1971-03\nHJ1929 = 1988-05\nZM0084 = 1990-09\nWQ1012 = 1978-12\n'));
  expect([none.status, none.stdout]).toEqual([1, 'No layout explains these codes.\n']);
  const faulty = run(write('faulty.txt', 'KV0915 1995-01\nHJ1929: no idea\n'));
  expect(faulty.status).toBe(2);
  expect(faulty.stderr).toMatch(/line 2: “no idea” is not a date\./);
}, 60_000);
