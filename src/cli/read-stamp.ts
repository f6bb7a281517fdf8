import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { inForce, type MakerFile, readMakerFileText } from '../maker';
import { problemWords } from './check-report';
import { openEngines } from './engines';
import { openPhotoFile } from './photo-file';
import { runMain } from './run-main';
import { saidProblems } from './said-problems';
import { photoResult, type StampResult } from './stamp-result';

const usage = 'usage: npm run -s read-stamp -- [--json] [--maker FILE]... PHOTO...';

/** Maker files named on the command line; without any, codes are read by their shape. A file with faults ends the command. */
function makersFrom(paths: readonly string[]): MakerFile[] {
  return paths.map((path) => {
    let text: string;
    try {
      text = readFileSync(path, 'utf8');
    } catch {
      throw new Error(`${path}: the maker file cannot be read`);
    }
    const read = readMakerFileText(text);
    if (read.ok) return inForce(read.file);
    throw new Error(
      saidProblems(read.problems)
        .map(({ where, what }) => `${path}: ${where}: ${what}`)
        .join('\n'),
    );
  });
}

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
  const makers = makersFrom(values.maker);
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
