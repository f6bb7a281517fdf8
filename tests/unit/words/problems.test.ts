import { describe, expect, it } from 'vitest';
import type { Within } from '../../../src/problem';
import { sayProblem } from '../../../src/words';
import { faultSorts as germanSorts } from '../../../src/words/de/file-problems';
import { problems as german } from '../../../src/words/de/problems';
import { faultSorts as englishSorts } from '../../../src/words/en/file-problems';
import { problems as english } from '../../../src/words/en/problems';
import { filesUnder, nodesOf, parseFile, type SyntaxNode } from '../layout/source-files';

/** Functions whose first text is the code of a failure. */
const tellers = new Set(['makerProblem', 'problem']);
const isCode = (value: unknown): value is string => typeof value === 'string' && /^[a-z]+(-[a-z]+)+$/.test(value);
const textsIn = (node: SyntaxNode) => [...nodesOf(node)].map(({ value }) => value);

/** Codes of failures that a file of the extension names. */
function codesIn(program: SyntaxNode): string[] {
  const codes: unknown[] = [];
  for (const node of nodesOf(program)) {
    if (node.type === 'Property' && (node.key as SyntaxNode).name === 'code')
      codes.push(...textsIn(node.value as SyntaxNode));
    if (node.type === 'CallExpression' && tellers.has(String((node.callee as SyntaxNode).name)))
      codes.push(...(node.arguments as SyntaxNode[]).slice(0, 1).map(({ value }) => value));
  }
  return codes.filter(isCode);
}

/** Failures that only the command line tells, in English alone. */
const elsewhere = /^src\/(cli|packaging)\//;
const named = new Set(
  filesUnder('src')
    .filter(({ path }) => !elsewhere.test(path))
    .flatMap((file) => codesIn(parseFile(file).program)),
);

describe.each([
  ['English', english, englishSorts],
  ['German', german, germanSorts],
])('failures in %s', (_, words, sorts) => {
  it('are written for every code that the extension tells', () => {
    expect(named.size).toBeGreaterThan(40);
    expect([...named].sort().filter((code) => !(code in words) && !(code in sorts))).toEqual([]);
  });

  it('begin small and have no full stop, because they stand within sentences', () => {
    const whole = Object.values(words).map(([what]) => what);
    const fixed = whole.filter((what) => typeof what === 'string');
    expect(fixed.length).toBeGreaterThan(40);
    expect(fixed.filter((what) => !/^[a-zäöü].*[^.]$/.test(what))).toEqual([]);
  });
});

describe('a failure', () => {
  const said = (problem: Parameters<typeof sayProblem>[0]) =>
    (['en', 'de'] as const).map((language) => sayProblem(problem, language).what);

  it('is said with its data in each language', () => {
    expect(said({ code: 'photo-late', data: { seconds: 35 } })).toEqual([
      'the photo did not arrive within 35 seconds',
      'das Foto kam nicht in 35 Sekunden an',
    ]);
    expect(said({ code: 'reader-failed', data: { said: 'out of memory' } })).toEqual([
      'the reader failed (the program reports “out of memory”)',
      'der Leser ist gescheitert (das Programm meldet „out of memory“)',
    ]);
    expect(said({ code: 'record-damaged', data: { place: 'listing.url', fault: 'missing' } })).toEqual([
      'the record is damaged: “listing.url” is missing',
      'der Eintrag ist beschädigt: „listing.url“ fehlt',
    ]);
  });

  it('tells first what failed before it', () => {
    const after = { code: 'photo-unreachable' };
    expect(said({ code: 'photo-not-shown', data: { why: 'faded' }, after })).toEqual([
      'the page may not fetch it, or the server did not answer; the page shows the photo faded',
      'die Seite darf es nicht holen, oder der Server hat nicht geantwortet; die Seite zeigt das Foto verblasst',
    ]);
  });

  it('tells others within it', () => {
    const reasons: Within[] = [{ code: 'photo-damaged' }, { code: 'photo-missing', data: { status: 404 } }];
    expect(said({ code: 'photos-not-read', data: { unread: 2, of: 3, reasons } })[0]).toBe(
      '2 of 3 photos not read: the photo is damaged or cut off: it could not be decoded to its end; the server answered 404',
    );
  });

  it('that an older record kept in English is said by its code where that tells all, and as it was written elsewhere', () => {
    const damaged = { code: 'photo-damaged', what: 'The photo is damaged.', remedy: 'Ask for it again.' };
    expect(said(damaged)[1]).toBe('das Foto ist beschädigt oder abgeschnitten');
    const late = { code: 'photo-late', what: 'the photo did not arrive within 30 seconds', remedy: 'Read again.' };
    expect(said(late)).toEqual([late.what, late.what]);
    expect(sayProblem({ code: 'not-known-yet', what: 'a', remedy: 'b' }, 'de')).toEqual({ what: 'a', remedy: 'b' });
    expect(sayProblem({ code: 'not-known-yet' }, 'de')).toEqual({ what: 'not-known-yet', remedy: '' });
  });
});
