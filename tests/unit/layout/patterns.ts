import { analyse } from 'scslre';
import { lineOf, nodesOf, parseFile, type SourceFile } from './source-files';

export interface Pattern {
  where: string;
  source: string;
  flags: string;
}

/** Every pattern that a file writes out, with its line. */
export function writtenPatterns(file: SourceFile): Pattern[] {
  return [...nodesOf(parseFile(file).program)].flatMap(({ type, regex, start }) => {
    if (type !== 'Literal' || !regex) return [];
    const { pattern, flags } = regex as { pattern: string; flags: string };
    return [{ where: `${file.path}:${lineOf(file.code, start)}`, source: pattern, flags }];
  });
}

/** Every pattern that is put together while `load` runs. */
export async function builtPatterns(load: () => Promise<unknown>): Promise<Pattern[]> {
  const built: Pattern[] = [];
  const Real = globalThis.RegExp;
  globalThis.RegExp = new Proxy(Real, {
    construct(target, values) {
      const pattern = Reflect.construct(target, values) as RegExp;
      const caller = new Error().stack?.split('\n').find((line) => line.includes('/src/'));
      const where = /\/(src\/[^:)]+)/.exec(caller ?? '')?.[1] ?? 'built';
      built.push({ where, source: pattern.source, flags: pattern.flags });
      return pattern;
    },
  });
  try {
    await load();
  } finally {
    globalThis.RegExp = Real;
  }
  return built;
}

/**
 * How a backtracking engine can be driven to more than linear work by a pattern: by one repetition that matches the same
 * characters in several ways, by two neighbours that can share a run in many ways, or by a repetition that is walked
 * again from each place of a run because what follows it fails. Empty for a pattern whose work grows with the text.
 */
export function faultsOf({ where, source, flags }: Pattern): string[] {
  return analyse({ source, flags }).reports.map((report) => {
    const parts =
      report.type === 'Trade' ? [report.startQuant.raw, report.endQuant.raw] : [(report.quant as { raw: string }).raw];
    return `${where}: ${parts.join(' and ')} of /${source.slice(0, 80)}/ (${report.type}${report.exponential ? ', exponential' : ''})`;
  });
}
