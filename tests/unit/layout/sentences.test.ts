import { describe, expect, it } from 'vitest';
import { sentencesIn, wordless } from './sentences';
import { filesUnder } from './source-files';

const files = filesUnder('src').filter(({ path }) => wordless.some((folder) => path.startsWith(`src/${folder}/`)));

/** Files that hold words all the same, and why. */
const allowed = new Map([
  ['src/code/difference.ts', 'in English for the command line; `words` says it to the screens'],
  ['src/code/expected.ts', 'in English for the command line and faults of maker files; `words` says it to the screens'],
  ['src/case/skipped.ts', 'failures, said in other languages by their codes'],
  ['src/span/calendar.ts', 'dates in English for the command line; `words` says them to the screens'],
]);
/** A name of several words that is a key, kept in looks: no screen shows it. */
const keys = / day of year$/;

describe('the core stores no sentence', () => {
  it('holds in the source', () => {
    expect(files.length).toBeGreaterThan(200);
    expect(files.flatMap((file) => sentencesIn(file, allowed)).filter((said) => !keys.test(said))).toEqual([]);
  });

  it('allows no file that needs no leave', () => {
    const idle = [...allowed.keys()].filter((path) => {
      const own = files.filter((file) => file.path.startsWith(path));
      return own.length > 0 && own.every((file) => sentencesIn(file, new Map()).length === 0);
    });
    expect(idle).toEqual([]);
  });
});

describe('the test itself', () => {
  const said = (code: string, path = 'src/mark/x.ts') => sentencesIn({ path, code }, allowed);

  it.each([
    ['a sentence', "export const a = { statement: 'It dates the label.' };"],
    ['one without a full stop', "export const a = 'granted no earlier than 1851';"],
    ['one joined from pieces', `export const a = (b: string) => \`the label was sewn in \${b}\`;`],
    ['one handed on', "found(since, true, 'so what carries it is no older');"],
  ])('notices %s', (_, code) => {
    expect(said(code)).toHaveLength(1);
    expect(said(code, 'src/words/en/x.ts')).toEqual([]);
  });

  it.each([
    [
      'a document’s own name',
      "export const a = { source: { kind: 'published', text: 'US Federal Trade Commission' } };",
    ],
    [
      'a failure',
      "export const a = { code: 'no-such', what: 'the photo is too small', remedy: 'Ask for a larger one.' };",
    ],
    ['an error that nobody is told', "throw new Error('a row from memory is never hard');"],
    ['a key', "export const a = { kind: 'dates-label' };"],
    ['a comment', '// It dates the label, not the piece.\nexport const a = 1;'],
  ])('lets %s stand', (_, code) => {
    expect(said(code)).toEqual([]);
  });
});
