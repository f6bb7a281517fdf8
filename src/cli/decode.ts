import { parseArgs } from 'node:util';
import { decodeText, expectedWords, readsOf } from '../code';
import type { Decoding, Reading } from '../code/types';
import { inForce } from '../maker';
import { sayReadingReason, sayTells } from '../words';
import { changeWords } from './change-words';
import { makerFileAt } from './maker-file-at';
import { runMain } from './run-main';

/*
 * npm run -s decode -- [--json] [--maker FILE]... CODE...
 * Reads codes under the maker files given; without any, by their shape alone (the code families).
 * Exit codes: 0 done, 2 the command or a maker file is at fault (the reason is on stderr).
 */

const usage = 'usage: npm run -s decode -- [--json] [--maker FILE]... CODE...';

function readArguments() {
  try {
    return parseArgs({
      options: { json: { type: 'boolean' }, maker: { type: 'string', multiple: true } },
      allowPositionals: true,
    });
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
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

async function main(): Promise<number> {
  const { values, positionals } = readArguments();
  if (positionals.length === 0) throw new Error(`no code given\n${usage}`);
  const given = (values.maker ?? []).map(makerFileAt).map(inForce);
  const names = [...new Set(given.map(({ maker }) => maker))];
  const now = new Date().toISOString().slice(0, 10);
  const decodings = positionals.map((code) => ({
    ...decodeText(code, { makers: given, maker: names.length > 0 ? names : null, now }),
    code,
  }));
  if (values.json) process.stdout.write(`${JSON.stringify(decodings.map(contractOf), null, 2)}\n`);
  else process.stdout.write(`${decodings.map(tableOf).join('\n')}\n`);
  return 0;
}

runMain(main);
