import { parseArgs } from 'node:util';
import { type Proposal, takeFromPage } from '../take';
import { problemWords } from './check-report';
import { openSavedPage } from './saved-page';

/*
 * npm run -s take -- [--json] PAGE.html [--url URL] [--now DAY]
 * What a page that tells of makers proposes for maker files: JSON for programs, else a line each by maker. Exit codes:
 * 0 the page was read (also when it proposes nothing), 2 it could not be, or the command is at fault.
 */

const usage = 'usage: npm run -s take -- [--json] PAGE.html [--url URL] [--now DAY]';

function stop(message: string): never {
  process.stderr.write(`${message}\n`);
  process.exit(2);
}

function readArguments() {
  try {
    const options = { json: { type: 'boolean' }, url: { type: 'string' }, now: { type: 'string' } } as const;
    return parseArgs({ options, allowPositionals: true });
  } catch (error) {
    return stop(`${error instanceof Error ? error.message : 'wrong arguments'}\n${usage}`);
  }
}

/** The fields of an entry alone, as short JSON. */
function entryOf({ maker, words, at, also, source, doubts, ticked, ...entry }: Proposal): string {
  return JSON.stringify(entry);
}

function listOf(proposals: readonly Proposal[]): string {
  const makers = [...new Set(proposals.map(({ maker }) => maker))];
  return makers
    .flatMap((maker) => [
      maker ?? '(no maker named)',
      ...proposals
        .filter((one) => one.maker === maker)
        .flatMap((one) => [
          `  [${one.ticked ? 'x' : ' '}] ${entryOf(one)}${one.doubts.length > 0 ? `  (${one.doubts.join(', ')})` : ''}`,
          `      "${one.words.replace(/\s{1,200}/g, ' ').slice(0, 160)}"  ${one.at.selector}`,
        ]),
    ])
    .join('\n');
}

const { values, positionals } = readArguments();
const [path, ...more] = positionals;
if (path === undefined || more.length > 0) stop(usage);
const day = values.now ?? new Date().toISOString().slice(0, 10);
if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) stop(`${day}: not a day as 2026-01-15`);
const page = openSavedPage(path, values.url);
if (!page.ok) stop(`${page.problem.where}: ${problemWords(page.problem)}`);
const proposals = takeFromPage(page.value.document, { address: page.value.address, day });
if (values.json) process.stdout.write(`${JSON.stringify(proposals, null, 2)}\n`);
else process.stdout.write(proposals.length > 0 ? `${listOf(proposals)}\n` : 'This page proposes nothing.\n');
