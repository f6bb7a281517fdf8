import { nodesOf, type SyntaxNode } from '../unit/layout/source-files';

/** One small change of a file's text that its tests should notice. */
export interface Change {
  start: number;
  end: number;
  /** What stands there instead. */
  text: string;
  /** Which kind of change it is. */
  operator: string;
}

type Read = (node: unknown) => string;
type Operator = (node: SyntaxNode, read: Read) => string[];

const binary: Record<string, string[]> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
};
const logical: Record<string, string> = { '&&': '||', '||': '&&', '??': '&&' };
const assigned: Record<string, string> = { '+=': '-=', '-=': '+=', '*=': '/=', '/=': '*=' };
const swapped: Record<string, string> = {
  some: 'every',
  every: 'some',
  find: 'findLast',
  findLast: 'find',
  indexOf: 'lastIndexOf',
  lastIndexOf: 'indexOf',
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  startsWith: 'endsWith',
  endsWith: 'startsWith',
  toLowerCase: 'toUpperCase',
  toUpperCase: 'toLowerCase',
};
/** Calls that give something of the kind they were called on, so that leaving them out still runs. */
const leftOut = ['filter', 'sort', 'toSorted', 'reverse', 'toReversed', 'slice', 'trim', 'trimStart', 'trimEnd'];

const isText = (node: unknown): boolean => {
  const { type, value, left, right, operator } = node as Record<string, unknown>;
  return (
    type === 'TemplateLiteral' ||
    (type === 'Literal' && typeof value === 'string') ||
    (type === 'BinaryExpression' && operator === '+' && (isText(left) || isText(right)))
  );
};
const otherNumber = (value: number): number =>
  Number.isInteger(value) ? value + 1 : Number((value * 1.1).toPrecision(6));

const operators: Record<string, Operator> = {
  comparison: (node, read) => {
    const { left, right, operator } = node as SyntaxNode & { operator: string };
    if (node.type !== 'BinaryExpression' || !/[<>=]/.test(operator)) return [];
    return (binary[operator] ?? []).map((other) => `${read(left)} ${other} ${read(right)}`);
  },
  arithmetic: (node, read) => {
    const { left, right, operator, argument, prefix } = node as SyntaxNode & { operator: string; prefix: boolean };
    if (node.type === 'AssignmentExpression' && assigned[operator] && !isText(right))
      return [`${read(left)} ${assigned[operator]} ${read(right)}`];
    if (node.type === 'UpdateExpression') {
      const other = operator === '++' ? '--' : '++';
      return [prefix ? other + read(argument) : read(argument) + other];
    }
    if (node.type !== 'BinaryExpression' || !/^[-+*/%]$/.test(operator) || isText(node)) return [];
    return (binary[operator] ?? []).map((other) => `${read(left)} ${other} ${read(right)}`);
  },
  logic: (node, read) => {
    const { left, right, operator, argument } = node as SyntaxNode & { operator: string };
    if (node.type === 'UnaryExpression' && operator === '!') return [read(argument)];
    const other = node.type === 'LogicalExpression' ? logical[operator] : undefined;
    return other ? [`((${read(left)}) ${other} (${read(right)}))`] : [];
  },
  boolean: (node) => (node.type === 'Literal' && typeof node.value === 'boolean' ? [String(!node.value)] : []),
  number: (node) =>
    node.type === 'Literal' && typeof node.value === 'number' ? [String(otherNumber(node.value))] : [],
  condition: (node, read) => {
    const { test, consequent, alternate } = node;
    if (node.type === 'ConditionalExpression') return [`(${read(consequent)})`, `(${read(alternate)})`];
    if (node.type !== 'IfStatement') return [];
    const otherwise = alternate ? ` else ${read(alternate)}` : '';
    // Written so that the compiler's view of what a name holds does not matter when it runs.
    return ['true', 'false'].map((fixed) =>
      `if (${fixed} || ${read(test)}) ${read(consequent)}${otherwise}`.replace('false ||', 'false &&'),
    );
  },
  statement: (node) => {
    const { expression } = node as SyntaxNode & { expression?: SyntaxNode };
    const acts = node.type === 'ExpressionStatement' && expression?.type !== 'Literal';
    return acts || node.type === 'ContinueStatement' || node.type === 'BreakStatement' ? [';'] : [];
  },
  method: (node, read) => {
    const { callee, arguments: given, optional } = node as SyntaxNode & { callee: SyntaxNode; arguments: SyntaxNode[] };
    if (node.type !== 'CallExpression' || callee.type !== 'MemberExpression' || callee.computed || optional) return [];
    const name = read(callee.property);
    const after = `(${given.map(read).join(', ')})`;
    if (Object.hasOwn(swapped, name))
      return [`${read(callee.object)}${callee.optional ? '?.' : '.'}${swapped[name]}${after}`];
    return leftOut.includes(name) ? [read(callee.object)] : [];
  },
  text: (node) => {
    const empty =
      node.type === 'TemplateLiteral' ? (node.quasis as unknown[]).length === 1 && isEmpty(node) : node.value === '';
    if (node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string'))
      return [empty ? "'changed'" : "''"];
    return [];
  },
};
const isEmpty = (node: SyntaxNode): boolean => node.end === node.start + 2;

/** What runs no differently whatever stands there: types, addresses of imports, keys, and messages of thrown errors. */
function skips(node: SyntaxNode): unknown[] {
  const { type } = node;
  if (/^TS/.test(type)) return /^TS(As|Satisfies|NonNull)/.test(type) ? [node.typeAnnotation] : [node];
  if (type === 'ImportDeclaration' || type === 'ExportAllDeclaration') return [node];
  if (type === 'ExportNamedDeclaration') return [node.source];
  if (type === 'Property' || type === 'MemberExpression') return node.computed ? [] : [node.key ?? node.property];
  if (type === 'NewExpression' && /Error$/.test(String((node.callee as SyntaxNode).name)))
    return node.arguments as unknown[];
  if (type === 'TaggedTemplateExpression') return [node.quasi];
  return [];
}

/** All changes of one file, in the order of its text. */
export function changesOf(code: string, program: SyntaxNode): Change[] {
  const read: Read = (node) => code.slice((node as SyntaxNode).start, (node as SyntaxNode).end);
  const skipped = new Set<unknown>();
  const changes: Change[] = [];
  for (const node of nodesOf(program)) {
    if (skipped.has(node)) {
      for (const inner of Object.values(node)) skipInside(inner, skipped);
      continue;
    }
    for (const one of skips(node)) skipInside(one, skipped);
    if (skipped.has(node)) continue;
    for (const [operator, make] of Object.entries(operators))
      for (const text of make(node, read)) {
        const old = read(node);
        if (text !== old) changes.push({ start: node.start, end: node.end, text, operator });
      }
  }
  return changes.sort((a, b) => a.start - b.start);
}

function skipInside(node: unknown, skipped: Set<unknown>): void {
  for (const one of nodesOf(node)) skipped.add(one);
}
