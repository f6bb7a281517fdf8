import { findNodeAtLocation, parseTree } from 'jsonc-parser';
import { testSystem } from '../code';
import { type MakerFault, type MakerProblem, makerProblem } from './fault';
import { currentFormat, earlierFormOf, inCurrentFormat } from './format';
import { plainProblems } from './plain';
import { sayingProblems } from './saying-problems';
import { type MakerFile, makerFileSchema } from './schema';

export type MakerFileResult = { ok: true; file: MakerFile } | { ok: false; problems: MakerProblem[] };

/** Far above any maker file (the largest of ours has 15,000 characters); bounds the work on a hostile one. */
export const largestFile = 2_000_000;
const mostValues = 40_000;
const deepest = 40;

const refuse = (code: string, fault: MakerFault): MakerFileResult => ({
  ok: false,
  problems: [makerProblem(code, 'the file', fault)],
});

/**
 * Checks a value as a maker file of any format: its form, its dates, its layouts, and that every example decodes as it
 * says. A file of an earlier format is held to the form of its day and comes back as one of today's. Bounded work for
 * any value: too large and too deep ones are refused before they are looked into.
 */
export function parseMakerFile(value: unknown): MakerFileResult {
  const size = sizeFault(value);
  if (size) return refuse('maker-file-too-large', size);
  const newer = newerFormat(value);
  if (newer !== null) {
    const fault: MakerFault = { kind: 'newer-format', format: newer, most: currentFormat };
    return { ok: false, problems: [makerProblem('maker-file-newer', 'format', fault)] };
  }
  const former = earlierFormOf(value)?.safeParse(value);
  if (former && !former.success) return { ok: false, problems: plainProblems(former.error.issues, value) };
  const current = inCurrentFormat(value);
  const parsed = makerFileSchema.safeParse(current);
  if (!parsed.success) return { ok: false, problems: plainProblems(parsed.error.issues, current) };
  const problems = [...sayingProblems(parsed.data), ...systemProblems(parsed.data)];
  if (problems.length === 0) return { ok: true, file: parsed.data };
  return { ok: false, problems: former ? problems.map(asWrittenThen) : problems };
}

/** A value that was a maker file when it was kept, as one of today's; it is held to its form alone. Throws for any other. */
export const makerFileForm = (value: unknown): MakerFile => makerFileSchema.parse(inCurrentFormat(value));

/** A problem of a file of the first format, at the place where that file has it. */
const asWrittenThen = (problem: MakerProblem): MakerProblem => ({
  ...problem,
  where: problem.where.replace(/^(models\[\d+\])\.runs\[\d+\]/, '$1'),
});

/** The format that a file says it is of, where no build of today knows it. */
function newerFormat(value: unknown): number | null {
  const format = typeof value === 'object' && value !== null ? Reflect.get(value, 'format') : null;
  return Number.isInteger(format) && format > currentFormat ? format : null;
}

/** Reads a maker file's text. Problems name the line when the text is JSON. */
export function readMakerFileText(text: string): MakerFileResult {
  if (text.length > largestFile) {
    const fault: MakerFault = { kind: 'file-characters', is: text.length, most: largestFile };
    return refuse('maker-file-too-large', fault);
  }
  if (deeperThan(text, deepest)) return refuse('maker-file-too-large', { kind: 'deeper', most: deepest });
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    const said = error instanceof Error ? error.message.slice(0, 200) : '';
    return refuse('maker-file-not-json', { kind: 'not-json', said });
  }
  const result = parseMakerFile(value);
  return result.ok ? result : { ok: false, problems: withLines(result.problems, text) };
}

/** Whether brackets open too deep, told before parsing because parsing them takes long. */
function deeperThan(text: string, most: number): boolean {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (quoted) {
      if (code === 0x5c) at++;
      else if (code === 0x22) quoted = false;
    } else if (code === 0x22) quoted = true;
    else if (code === 0x5b || code === 0x7b) {
      if (++depth > most) return true;
    } else if (code === 0x5d || code === 0x7d) depth--;
  }
  return false;
}

/** Adds the line of each problem's field, found by its path. */
function withLines(problems: MakerProblem[], text: string): MakerProblem[] {
  const tree = text.length < 500_000 ? parseTree(text) : undefined;
  if (!tree) return problems;
  return problems.map((problem) => {
    const path = [...problem.where.matchAll(/([A-Za-z$]+)|\[(\d+)\]/g)].map(([, key, index]) => key ?? Number(index));
    for (let length = path.length; length > 0; length--) {
      const node = findNodeAtLocation(tree, path.slice(0, length));
      if (!node) continue;
      return { ...problem, line: text.slice(0, node.offset).split('\n').length };
    }
    return problem;
  });
}

/** Counts values and characters with a stack (recursion would overflow on a deep file). */
function sizeFault(value: unknown): MakerFault | null {
  const open: { value: unknown; depth: number }[] = [{ value, depth: 0 }];
  let values = 0;
  let characters = 0;
  while (open.length > 0) {
    const here = open.pop()!;
    if (++values > mostValues) return { kind: 'more-values', most: mostValues };
    if (here.depth > deepest) return { kind: 'deeper', most: deepest };
    if (typeof here.value === 'string') characters += here.value.length;
    if (characters > largestFile) return { kind: 'more-characters', most: largestFile };
    if (typeof here.value !== 'object' || here.value === null) continue;
    const inside = Array.isArray(here.value) ? here.value : Object.values(here.value);
    if (inside.length > mostValues) return { kind: 'more-values', most: mostValues };
    for (const item of inside) open.push({ value: item, depth: here.depth + 1 });
  }
  return null;
}

/** Bound on the steps of testing all examples; a file of ours needs about a thousandth. */
const mostExampleWork = 3_000_000;

/** Steps that testing a system's examples can take at most: slots that may be left out multiply the ways to read. */
function exampleWork(system: MakerFile['codeSystems'][number]): number {
  const layouts = system.layouts ?? (system.layout ? [system.layout] : []);
  const longest = Math.max(0, ...system.examples.map(({ code }) => code.length));
  return layouts.reduce((work, layout) => {
    const open = layout.filter((slot) => ('optional' in slot && slot.optional) || 'serial' in slot).length;
    return work + system.examples.length * longest * Math.min(64, 2 ** open) * (1 + open);
  }, 0);
}

function systemProblems(file: MakerFile): MakerProblem[] {
  const ids = new Set<string>();
  let work = 0;
  return file.codeSystems.flatMap((system, index): MakerProblem[] => {
    const where = `codeSystems[${index}]`;
    const problems: MakerProblem[] = [];
    const add = (code: string, at: string, fault: MakerFault) => problems.push(makerProblem(code, at, fault));
    if (ids.has(system.id)) add('maker-file-double-id', `${where}.id`, { kind: 'double-id', id: system.id });
    ids.add(system.id);
    if ((system.layout === undefined) === (system.layouts === undefined)) {
      const fault: MakerFault = { kind: system.layout ? 'both-layouts' : 'no-layout' };
      add('maker-file-layout', where, fault);
      return problems;
    }
    work += exampleWork(system);
    if (work > mostExampleWork) {
      add('maker-file-too-large', where, { kind: 'too-many-to-test' });
      return problems;
    }
    const faults = testSystem(system, file.plants);
    for (const { layout, slot, fault } of faults.layouts) {
      const path = `${where}.${layout}${slot === null ? '' : `[${slot}]`}`;
      add('maker-file-layout', path, fault);
    }
    for (const { example, fault } of faults.examples) {
      add('maker-file-example', `${where}.examples[${example}]`, fault);
    }
    return problems;
  });
}
