import { parseArgs } from 'node:util';
import {
  type Explanation,
  type KnownCode,
  type Learned,
  learnSystem,
  type OpenReason,
  readKnownList,
  writeLearned,
} from '../code';
import { sayKnownFault, sayLayoutPart, strings } from '../words';
import { textAt } from './file-text';
import { makerFileAt } from './maker-file-at';
import { runMain } from './run-main';

/*
 * npm run -s learn -- [--json] [--into MAKERFILE --id ID] CODES
 * Works out a code system from known codes. CODES is a text file as people write such lists: one code a line with its
 * date and, where known, the country, "KV0915 = 1995-01, BE"; dates may be in words ("about 1990", "bought 2001"). With
 * --into what is likeliest is written into a copy of the maker file, on stdout. Exit codes: 0 done, 1 nothing explains the
 * codes, 2 the command or a file is at fault (the reason is on stderr).
 */

const usage = 'usage: npm run -s learn -- [--json] [--into MAKERFILE --id ID] CODES';

function readKnownCodes(path: string): KnownCode[] {
  const rows = readKnownList(textAt(path));
  const faults = rows.flatMap(({ row, fault }) => (fault ? [`${path} line ${row}: ${sayKnownFault(fault)}`] : []));
  if (faults.length > 0) throw new Error(faults.join('\n'));
  return rows.flatMap(({ known }) => (known ? [known] : []));
}

function readArguments() {
  try {
    const options = {
      json: { type: 'boolean' },
      into: { type: 'string' },
      id: { type: 'string' },
    } as const;
    return parseArgs({ options, allowPositionals: true });
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
  }
}

const outcomes: Record<OpenReason | 'settled', string> = {
  settled: 'One explanation remains.',
  codes: "One code cannot tell how a maker's codes are written: give more known codes, of different dates.",
  none: 'No layout explains these codes.',
  rivals: 'Several explanations remain, likeliest first.',
  day: 'One explanation remains, but no known date bears out what it reads as the day of the month.',
  days: 'One explanation remains, but two figures of its running number may be the day of the month: no date given is a day.',
  letters:
    'One explanation remains, but the codes do not tell which letters its cycle leaves out or which year they are of.',
  chance: 'One explanation remains, but as much would fit by chance: give more examples.',
  two: 'One explanation remains, but two codes do not fit it: they may be wrong, or of another system.',
};

function tableOf(learned: Learned, examples: readonly KnownCode[]): string {
  const line = ({ eras }: Explanation, at: number) =>
    eras.map(({ layout, used, says }, era) =>
      [
        `${era === 0 ? `${at + 1}.` : '  then'} ${says.map((one) => sayLayoutPart(one, 'en')).join('; ')}`,
        `   ${JSON.stringify(layout)}`,
        `   known from ${used[0]} to ${used[1] ?? 'now'}`,
      ].join('\n'),
    );
  const doubted = learned.doubted.map(
    ({ index, reads }) =>
      `doubted: ${examples[index]!.code} (said to be ${examples[index]!.reads}): ${reads === null ? 'does not fit' : `reads ${reads}`}`,
  );
  const telling = learned.tellingCode ? [`A code such as ${learned.tellingCode.code} would tell them apart.`] : [];
  const unusable = learned.unusable.map(
    ({ index, why }) => `not used: ${examples[index]!.code}: ${strings.makers.learn.unusable(why)}`,
  );
  return [
    outcomes[learned.open ?? 'settled'],
    ...telling,
    ...learned.remaining.flatMap(line),
    ...doubted,
    ...unusable,
  ].join('\n');
}

async function main(): Promise<number> {
  const { values, positionals } = readArguments();
  const [path, ...more] = positionals;
  if (path === undefined || more.length > 0) throw new Error(`one file of known codes is needed\n${usage}`);
  if ((values.into === undefined) !== (values.id === undefined))
    throw new Error(`--into and --id go together\n${usage}`);
  const examples = readKnownCodes(path);
  const learned = learnSystem(examples);
  const [best] = learned.remaining;
  if (values.into !== undefined && best) {
    const file = writeLearned(makerFileAt(values.into), best, examples, values.id!);
    process.stdout.write(`${JSON.stringify(file, null, 2)}\n`);
  } else {
    process.stdout.write(`${values.json ? JSON.stringify(learned, null, 2) : tableOf(learned, examples)}\n`);
  }
  return best ? 0 : 1;
}

runMain(main);
