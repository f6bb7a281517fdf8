import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { parseSync } from 'vite';

const root = resolve(import.meta.dirname, '../../..');

/** A file of the repository: its path from the root with forward slashes, and its text. */
export interface SourceFile {
  path: string;
  code: string;
}

/** All TypeScript under a folder of the repository; what trains the nets is no part of the program. */
export function filesUnder(folder: string): SourceFile[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ path: relative(root, file).replaceAll('\\', '/'), code: readFileSync(file, 'utf8') }))
    .filter(({ path }) => !path.includes('/training/'));
}

/** A node of the syntax tree, as far as these tests look at it. */
export interface SyntaxNode {
  type: string;
  start: number;
  end: number;
  [property: string]: unknown;
}

export interface Import {
  /** As written: "../span", "zod". */
  target: string;
  /** Types only: nothing of it is there when the program runs. */
  typesOnly: boolean;
  /** What it takes by name; "*" for all of it. */
  names: string[];
}

interface Parsed {
  imports: Import[];
  program: SyntaxNode;
}
const parsedFiles = new WeakMap<SourceFile, Parsed>();

/** A file's imports (re-exports and `import()` of a fixed name among them) and its syntax tree. */
export function parseFile(file: SourceFile): Parsed {
  const known = parsedFiles.get(file) ?? parse(file);
  parsedFiles.set(file, known);
  return known;
}

function parse({ path, code }: SourceFile): Parsed {
  const { module, program, errors } = parseSync(path, code);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  const imports: Import[] = module.staticImports.map(({ moduleRequest, entries }) => ({
    target: moduleRequest.value,
    typesOnly: entries.length > 0 && entries.every(({ isType }) => isType),
    names: entries.filter(({ isType }) => !isType).map(({ importName }) => importName.name ?? '*'),
  }));
  for (const { entries } of module.staticExports)
    for (const { moduleRequest, isType, importName } of entries)
      if (moduleRequest)
        imports.push({ target: moduleRequest.value, typesOnly: isType, names: [importName.name ?? '*'] });
  for (const { moduleRequest } of module.dynamicImports) {
    const written = /^['"`]([^'"`$]+)['"`]$/.exec(code.slice(moduleRequest.start, moduleRequest.end));
    if (written) imports.push({ target: written[1] as string, typesOnly: false, names: ['*'] });
  }
  return { imports, program: program as unknown as SyntaxNode };
}

/** Every node of a tree, parents before children. */
export function* nodesOf(node: unknown): Generator<SyntaxNode> {
  if (Array.isArray(node)) for (const inner of node) yield* nodesOf(inner);
  else if (typeof node === 'object' && node !== null) {
    if (typeof (node as SyntaxNode).type === 'string') yield node as SyntaxNode;
    for (const inner of Object.values(node)) if (typeof inner === 'object') yield* nodesOf(inner);
  }
}

export const lineOf = (code: string, position: number): number => code.slice(0, position).split('\n').length;
