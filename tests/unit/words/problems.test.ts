import { describe, expect, it } from 'vitest';
import { sayProblem } from '../../../src/words';
import { problems } from '../../../src/words/de/problems';
import { filesUnder, nodesOf, parseFile, type SyntaxNode } from '../layout/source-files';

/** Functions whose first or second text is the code of a failure. */
const tellers = new Set(['refuse', 'makerProblem', 'add', 'problem', 'unread', 'stopped', 'late']);
const isCode = (value: unknown): value is string => typeof value === 'string' && /^[a-z]+(-[a-z]+)+$/.test(value);

const textsIn = (node: SyntaxNode) => [...nodesOf(node)].map(({ value }) => value);

/** Codes of failures that a file of the extension names. */
function codesIn(program: SyntaxNode): string[] {
  const codes: unknown[] = [];
  for (const node of nodesOf(program)) {
    if (node.type === 'Property' && (node.key as SyntaxNode).name === 'code')
      codes.push(...textsIn(node.value as SyntaxNode));
    if (node.type === 'CallExpression' && tellers.has(String((node.callee as SyntaxNode).name)))
      codes.push(...(node.arguments as SyntaxNode[]).slice(0, 2).map(({ value }) => value));
  }
  return codes.filter(isCode);
}

/** What can be said of a page as a whole stands in one switch. */
const pageCodes = (program: SyntaxNode) =>
  [...nodesOf(program)].flatMap((node) =>
    node.type === 'SwitchCase' && node.test ? textsIn(node.test as SyntaxNode).filter(isCode) : [],
  );

/** Failures that only the command line tells, in English alone, and those that name a field of a form. */
const elsewhere = /^src\/(cli|packaging)\//;

describe('failures in German', () => {
  const files = filesUnder('src').filter(({ path }) => !elsewhere.test(path));
  const named = new Set(
    files.flatMap((file) => {
      const { program } = parseFile(file);
      return file.path.endsWith('/page-problems.ts') ? [...codesIn(program), ...pageCodes(program)] : codesIn(program);
    }),
  );

  it('are written for every code that the extension tells', () => {
    expect(named.size).toBeGreaterThan(40);
    expect([...named].sort().filter((code) => !(code in problems))).toEqual([]);
  });

  it('say what and what to do, and the value where only the failure knows it', () => {
    const late = { code: 'photo-late', what: 'the photo did not arrive within 30 seconds', remedy: 'Read again.' };
    expect(sayProblem(late, 'en')).toEqual({ what: late.what, remedy: late.remedy });
    expect(sayProblem(late, 'de').what).toBe('das Foto kam nicht rechtzeitig an');
    expect(sayProblem({ code: 'reader-failed', what: 'out of memory', remedy: '' }, 'de').what).toBe(
      'der Leser ist gescheitert (out of memory)',
    );
    const prices = { code: 'price-conflict', what: 'one price (€ 410) and another (€ 390)', remedy: '' };
    expect(sayProblem(prices, 'de').what).toMatch(/ \(one price \(€ 410\) and another \(€ 390\)\)$/);
  });

  it('leave a failure of a newer build in its own words', () => {
    expect(sayProblem({ code: 'not-known-yet', what: 'a', remedy: 'b' }, 'de')).toEqual({ what: 'a', remedy: 'b' });
  });
});
