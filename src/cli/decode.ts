import { existsSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { decodeText, expectedWords, readsOf } from '../code';
import type { Decoding, Reading } from '../code/types';
import { inForce, readMakerFileText } from '../maker';
import type { MakerFile } from '../maker/types';
import { sayReadingReason, sayTells } from '../words';
import { changeWords } from './change-words';
import { saidProblems } from './said-problems';

/*
 * npm run -s decode -- [--json] [--maker FILE]... CODE...
 * Reads codes under the maker files given; without any, by their shape alone (the code families).
 * Exit codes: 0 done, 2 the command or a maker file is at fault (the reason is on stderr).
 */

const usage = 'usage: npm run -s decode -- [--json] [--maker FILE]... CODE...';

function stop(message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(2);
}

/** A path as the user wrote it, also from a folder below the project's (npm starts programs in the project's own). */
const placeOf = (path: string): string =>
  existsSync(path) ? path : resolve(process.env.INIT_CWD ?? process.cwd(), path);

function readMaker(given: string): MakerFile {
  const path = placeOf(given);
  if (!existsSync(path)) stop(`${path}: there is no such maker file`);
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    stop(`${path}: cannot be read: ${error instanceof Error ? error.message : 'unknown reason'}`);
  }
  const result = readMakerFileText(text);
  if (result.ok) return result.file;
  const lines = saidProblems(result.problems).map(({ where, what, expected, remedy }) => {
    return `  ${where}: ${what}${expected ? ` (expected: ${expected})` : ''}. ${remedy}`;
  });
  return stop([`${path}: the maker file is refused`, ...lines].join('\n'));
}

function readArguments() {
  try {
    return parseArgs({
      options: { json: { type: 'boolean' }, maker: { type: 'string', multiple: true } },
      allowPositionals: true,
    });
  } catch (error) {
    return stop(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
  }
}

/** A reading in the JSON: with words, and its date and place in short form beside the full ones. */
const shownReading = (reading: Reading) => ({
  ...reading,
  parts: reading.parts.map(({ tells, ...part }) => ({ ...part, says: sayTells(tells, 'en') })),
  reasons: reading.reasons.map((reason) => sayReadingReason(reason, 'en')),
});

/** The JSON of one code. */
const contractOf = ({ code, readings, misfits, nearest, beside }: Decoding) => ({
  code,
  readings: readings.map((reading) => ({
    ...shownReading(reading),
    place: reading.places[0] ?? null,
    reads: readsOf(reading),
  })),
  nearest: nearest.map((near) => {
    const { text, system, likelihood, reading } = near;
    return { text, system, change: changeWords(code, near), likelihood, reading: shownReading(reading) };
  }),
  misfits: misfits.map((misfit) => ({ ...misfit, expected: expectedWords(misfit.expected) })),
  ...(beside ? { beside } : {}),
});

function tableOf({ code, readings, misfits, nearest, beside = [] }: Decoding): string {
  const share = (value: number) => `${(value * 100).toFixed(value < 0.1 ? 1 : 0)} %`.padStart(6);
  const system = ({ maker, id, invented }: Decoding['readings'][number]['system']) =>
    `${maker ?? 'family'}${invented ? ' (invented)' : ''} / ${id}`;
  const lines = [code === '' ? '(empty)' : code];
  for (const reading of readings) {
    lines.push(`  ${share(reading.probability)}  ${readsOf(reading).padEnd(24)} ${system(reading.system)}`);
    for (const reason of reading.reasons) lines.push(`          ${sayReadingReason(reason, 'en')}`);
  }
  for (const { text, kind, means } of beside) lines.push(`  beside it: ${text}  ${kind}: ${means}`);
  if (readings.length === 0) lines.push('  no reading');
  for (const { slot, value, expected, system: name } of misfits) {
    lines.push(`  ${slot} "${value}" cannot be: expected ${expectedWords(expected)} (${system(name)})`);
  }
  for (const near of nearest) {
    const { text, likelihood, reading } = near;
    lines.push(
      `  near: ${text}  ${readsOf(reading)}  ${changeWords(code, near)}  ${share(likelihood)}  ${system(reading.system)}`,
    );
  }
  return lines.join('\n');
}

const { values, positionals } = readArguments();
if (positionals.length === 0) stop(`no code given\n${usage}`);
const given = (values.maker ?? []).map(readMaker).map(inForce);
const names = [...new Set(given.map(({ maker }) => maker))];
const now = new Date().toISOString().slice(0, 10);
const decodings = positionals.map((code) => ({
  ...decodeText(code, { makers: given, maker: names.length > 0 ? names : null, now }),
  code,
}));
if (values.json) process.stdout.write(`${JSON.stringify(decodings.map(contractOf), null, 2)}\n`);
else process.stdout.write(`${decodings.map(tableOf).join('\n')}\n`);
