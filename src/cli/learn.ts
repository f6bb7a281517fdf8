import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { type Candidate, type KnownCode, type Learned, learnSystem, writeLearned } from '../code';
import { readMakerFileText } from '../maker';
import type { MakerFile } from '../maker/types';

/*
 * npm run -s learn -- [--json] [--wrong N] [--into MAKERFILE --id ID] CODES
 * Works out a code system from known codes. CODES is a text file with one code a line, "KV0915 = 1995-01, BE".
 * With --into the likeliest layout is written into a copy of the maker file, on stdout.
 * Exit codes: 0 done, 1 no layout explains the codes, 2 the command or a file is at fault (the reason is on stderr).
 */

const usage = 'usage: npm run -s learn -- [--json] [--wrong N] [--into MAKERFILE --id ID] CODES';

function stop(message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(2);
}

function readText(path: string): string {
  try {
    return readFileSync(resolve(process.env.INIT_CWD ?? process.cwd(), path), 'utf8');
  } catch (error) {
    return stop(`${path}: cannot be read: ${error instanceof Error ? error.message : 'unknown reason'}`);
  }
}

/** Lines of "CODE = reads"; empty lines and those that begin with # are passed over. */
function readKnownCodes(path: string): KnownCode[] {
  return readText(path)
    .split(/\r?\n/)
    .flatMap((line, at) => {
      if (line.trim() === '' || line.trimStart().startsWith('#')) return [];
      const [code, ...reads] = line.split('=');
      if (reads.length === 0)
        stop(`${path} line ${at + 1}: expected "CODE = date, place", for example KV0915 = 1995-01, BE`);
      return [{ code: code!.trim(), reads: reads.join('=').trim() }];
    });
}

function readArguments() {
  try {
    const options = {
      json: { type: 'boolean' },
      wrong: { type: 'string' },
      into: { type: 'string' },
      id: { type: 'string' },
    } as const;
    return parseArgs({ options, allowPositionals: true });
  } catch (error) {
    return stop(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
  }
}

function readMaker(path: string): MakerFile {
  const result = readMakerFileText(readText(path));
  if (result.ok) return result.file;
  return stop(result.problems.map(({ where, what }) => `${path}: ${where}: ${what}`).join('\n'));
}

function tableOf(learned: Learned, examples: readonly KnownCode[]): string {
  const line = ({ layout, used, wrong, words }: Candidate, at: number) => {
    const taken = wrong.map((index) => examples[index]!.code).join(', ');
    return [
      `${at + 1}. ${words.join('; ')}`,
      `   ${JSON.stringify(layout)}`,
      `   known from ${used[0]} to ${used[1] ?? 'now'}${taken ? `; taken to be wrong: ${taken}` : ''}`,
    ].join('\n');
  };
  const unusable = learned.unusable.map(({ index, why }) => `not used: ${examples[index]!.code}: ${why}`);
  return [learned.words, ...learned.remaining.map(line), ...unusable].join('\n');
}

const { values, positionals } = readArguments();
const [path, ...more] = positionals;
if (path === undefined || more.length > 0) stop(`one file of known codes is needed\n${usage}`);
const wrong = Number(values.wrong ?? 0);
if (!Number.isInteger(wrong) || wrong < 0) stop(`--wrong takes a number of examples\n${usage}`);
if ((values.into === undefined) !== (values.id === undefined)) stop(`--into and --id go together\n${usage}`);
const examples = readKnownCodes(path);
const learned = learnSystem(examples, { wrong });
const [best] = learned.remaining;
if (values.into !== undefined && best) {
  const file = writeLearned(readMaker(values.into), best, examples, values.id!);
  process.stdout.write(`${JSON.stringify(file, null, 2)}\n`);
} else {
  process.stdout.write(`${values.json ? JSON.stringify(learned, null, 2) : tableOf(learned, examples)}\n`);
}
process.exitCode = best ? 0 : 1;
