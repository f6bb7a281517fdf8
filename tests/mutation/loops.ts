import { nodesOf, parseFile, type SyntaxNode } from '../unit/layout/source-files';

const loops = ['WhileStatement', 'DoWhileStatement', 'ForStatement', 'ForOfStatement', 'ForInStatement'];

/** A file whose loops each count their turns, so that one which a change made endless is stopped by a number, not by a clock. */
export function withCountedLoops(path: string, code: string): string {
  const inserts: [at: number, text: string][] = [];
  for (const node of nodesOf(parseFile({ path, code }).program)) {
    if (!loops.includes(node.type)) continue;
    const body = node.body as SyntaxNode;
    if (body.type === 'BlockStatement') inserts.push([body.start + 1, 'turn$();']);
    else inserts.push([body.start, '{turn$();'], [body.end, '}']);
  }
  return inserts
    .sort(([a], [b]) => b - a)
    .reduce((text, [at, insert]) => text.slice(0, at) + insert + text.slice(at), code);
}
