import { lineOf, nodesOf, parseFile, type SourceFile, type SyntaxNode } from './source-files';

/** What judges keeps kinds and data: these folders hold no words that a screen says. */
export const wordless = ['span', 'claim', 'code', 'mark', 'evidence', 'check', 'question', 'case', 'photo/observe'];

/** Fewer words than this in a row are a name, a unit or a sign. */
const leastWords = 3;
const wordsOf = (text: string) => text.match(/(?<![^\s(“"'])\p{L}[\p{L}'’-]+(?=[\s,.:;!?)”"']|$)/gu) ?? [];
const isSentence = (text: string): boolean => / /.test(text) && wordsOf(text).length >= leastWords;

/** Who takes a text that no screen says: a failure's own stack, the words beside a form, a pattern, a document's name. */
const callees = new Set(['Error', 'describe', 'regex', 'refine', 'datetime', 'RegExp', 'split', 'rowSource']);
/** Documents name themselves; failures are said in English where they happen, and by their code in other languages. */
const properties = new Set(['text', 'source', 'sources', 'what', 'remedy', 'expected', 'error']);

const nameOf = (node: unknown): string => {
  const { type, name, property } = (node ?? {}) as SyntaxNode;
  return type === 'MemberExpression' ? nameOf(property) : String(name ?? '');
};

function textOf(node: SyntaxNode): string | null {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : null;
  if (node.type !== 'TemplateLiteral') return null;
  return (node.quasis as { value: { cooked: string } }[]).map(({ value }) => value.cooked).join('0');
}

function isExcused(node: SyntaxNode): boolean {
  if (node.type === 'Property') return properties.has(nameOf(node.key));
  if (node.type === 'TaggedTemplateExpression') return true;
  return (node.type === 'CallExpression' || node.type === 'NewExpression') && callees.has(nameOf(node.callee));
}

/** Each sentence that a file keeps as "path:line sentence"; `allowed` are files that may, and why. */
export function sentencesIn(file: SourceFile, allowed: ReadonlyMap<string, string>): string[] {
  const isHeld = wordless.some((folder) => file.path.startsWith(`src/${folder}/`));
  if (!isHeld || [...allowed.keys()].some((path) => file.path.startsWith(path))) return [];
  const nodes = [...nodesOf(parseFile(file).program)];
  const excused = nodes.filter(isExcused);
  return nodes.flatMap((node) => {
    const text = textOf(node);
    if (text === null || !isSentence(text)) return [];
    if (excused.some(({ start, end }) => start <= node.start && node.end <= end)) return [];
    return [`${file.path}:${lineOf(file.code, node.start)} ${text}`];
  });
}
