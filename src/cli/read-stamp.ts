import { parseArgs } from 'node:util';
import { inForce } from '../maker';
import { problemWords } from './check-report';
import { openEngines } from './engines';
import { makerFileAt } from './maker-file-at';
import { openPhotoFile } from './photo-file';
import { runMain } from './run-main';
import { photoResult, type StampResult } from './stamp-result';

/*
 * npm run -s read-stamp -- [--json] [--maker FILE]... PHOTO...
 * Codes are read under the maker files given; without any, by their shape alone. Exit codes: 0 all photos were opened, 1 one
 * was not, 2 the command or a maker file is at fault (the reason is on stderr).
 */

const usage = 'usage: npm run -s read-stamp -- [--json] [--maker FILE]... PHOTO...';

function asWords(result: StampResult): string {
  if (result.problem !== undefined) return `${result.file}: ${problemWords(result.problem)}`;
  const [best] = result.readings;
  const said =
    best !== undefined
      ? `${best.text}, ${Math.round(best.probability * 100)}%${best.system === null ? ', no code system' : `, ${best.system.maker ?? 'by its shape'}${best.system.invented ? ' (invented)' : ''}: ${best.system.id}`}`
      : `no stamp read${result.candidates === undefined ? '' : `; perhaps ${result.candidates.map(({ text }) => text).join(', ')}`}`;
  return `${result.file}: ${said}${result.printed.length > 0 ? `; printed: ${result.printed.join(' / ')}` : ''}`;
}

async function main(): Promise<number> {
  const { values, positionals } = parseArgs({
    options: { json: { type: 'boolean', default: false }, maker: { type: 'string', multiple: true, default: [] } },
    allowPositionals: true,
  });
  if (positionals.length === 0) throw new Error(usage);
  const makers = values.maker.map(makerFileAt).map(inForce);
  const named = values.maker.length > 0 ? makers.map(({ maker }) => maker) : null;
  const now = new Date().toISOString().slice(0, 10);
  const { engines, close } = await openEngines();
  try {
    const results: StampResult[] = [];
    for (const file of positionals) {
      const opened = await openPhotoFile(file);
      results.push(
        opened.ok
          ? await photoResult(file, opened.value, engines, { makers, maker: named, now })
          : { file, readings: [], printed: [], problem: opened.problem },
      );
    }
    console.log(values.json ? JSON.stringify(results, null, 2) : results.map(asWords).join('\n'));
    return results.some(({ problem }) => problem !== undefined) ? 1 : 0;
  } finally {
    await close();
  }
}

runMain(main);
