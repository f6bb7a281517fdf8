import { lineOf, nodesOf, parseFile, type SourceFile, type SyntaxNode } from './source-files';

/**
 * Folders that hold words by their task: the languages, the command line, what the build writes into the package, and
 * what people write on pages, which is read and never said.
 */
const wordy = ['words', 'cli', 'packaging', 'text'];
export const isWordless = (path: string) => !wordy.some((folder) => path.startsWith(`src/${folder}/`));

/** Fewer words than this in a row are a name, a unit or a sign. */
const leastWords = 3;
const wordsOf = (text: string) => text.match(/(?<![^\s(“"'])\p{L}[\p{L}'’-]+(?=[\s,.:;!?)”"']|$)/gu) ?? [];
const isSentence = (text: string): boolean => / /.test(text) && wordsOf(text).length >= leastWords;

/** Who takes a text that no screen says: a failure's own stack, the words beside a form, a pattern, a document's name. */
const callees = new Set(['Error', 'describe', 'regex', 'refine', 'datetime', 'RegExp', 'split', 'rowSource']);
/** Documents name themselves; the words beside a form tell its author what does not fit, and no screen says them. */
const properties = new Set(['text', 'source', 'sources', 'error']);

const nameOf = (node: unknown): string => {
  const { type, name, property } = (node ?? {}) as SyntaxNode;
  return type === 'MemberExpression' ? nameOf(property) : String(name ?? '');
};

function textOf(node: SyntaxNode): string | null {
  if (node.type === 'JSXText') return String(node.value).trim();
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node.type !== 'TemplateLiteral') return null;
  return (node.quasis as { value: { cooked: string } }[]).map(({ value }) => value.cooked).join('0');
}

function isExcused(node: SyntaxNode): boolean {
  if (node.type === 'Property') return properties.has(nameOf(node.key));
  if (node.type === 'TaggedTemplateExpression') return true;
  if (node.type === 'JSXAttribute') return nameOf(node.name) === 'class';
  // What a developer reads in the console.
  if (node.type === 'CallExpression' && nameOf((node.callee as SyntaxNode).object) === 'console') return true;
  return (node.type === 'CallExpression' || node.type === 'NewExpression') && callees.has(nameOf(node.callee));
}

/** Each sentence that a file keeps as "path:line sentence"; `allowed` are files that may, and why. */
export function sentencesIn(file: SourceFile, allowed: ReadonlyMap<string, string>): string[] {
  if (!isWordless(file.path) || [...allowed.keys()].some((path) => file.path.startsWith(path))) return [];
  const nodes = [...nodesOf(parseFile(file).program)];
  const excused = nodes.filter(isExcused);
  return nodes.flatMap((node) => {
    const text = textOf(node);
    if (text === null || !isSentence(text)) return [];
    if (excused.some(({ start, end }) => start <= node.start && node.end <= end)) return [];
    return [`${file.path}:${lineOf(file.code, node.start)} ${text}`];
  });
}
