import { describe, expect, it } from 'vitest';
import { isWordless, sentencesIn } from './sentences';
import { filesUnder } from './source-files';

const files = filesUnder('src').filter(({ path }) => isWordless(path));

const failures = 'failures, said in other languages by their codes';
const selectors = 'a selector, and no words';
/** Files that hold words all the same, and why. */
const allowed = new Map([
  ['src/browser/compat.ts', 'why the browser is asked for a page without a window; it shows this to nobody'],
  ['src/browser/manifest.ts', 'what a policy is written in'],
  ['src/browser/watch-tab.ts', failures],
  ['src/listing/page-problems.ts', failures],
  ['src/maker/fault.ts', failures],
  ['src/maker/json-schema.ts', 'the published schema is in English'],
  ['src/maker/live.ts', 'names of outcomes'],
  ['src/maker/parse.ts', failures],
  ['src/maker/plain.ts', failures],
  ['src/maker/saying-problems.ts', failures],
  ['src/message/answer.ts', failures],
  ['src/photo/foreign-format.ts', failures],
  ['src/photo/header.ts', failures],
  ['src/photo/open.ts', failures],
  [
    'src/place/iso.ts',
    'names of countries that Intl does not know, in English; `words` has those of the other languages',
  ],
  ['src/reader/file/', failures],
  ['src/reader/graphics.ts', failures],
  ['src/reader/host.ts', failures],
  ['src/reader/page/', failures],
  ['src/reader/photo/', failures],
  ['src/reader/started-within.ts', failures],
  ['src/reader/worker.ts', failures],
  ['src/stamp/net/onnx.ts', failures],
  ['src/stamp/read-stamp.ts', failures],
  ['src/take/page/blocks.ts', selectors],
  ['src/ui/dossier/dossier-file.ts', 'the frame of a document, and a selector'],
  ['src/ui/makers/go-to-field.ts', selectors],
  ['src/ui/panel/read-photos.ts', failures],
  ['src/ui/use-focus-kept.ts', selectors],
  ['src/watch/look.ts', failures],
  ['src/watch/migrations/index.ts', failures],
  ['src/watch/record/standing.ts', failures],
  ['src/watch/judge-anew.ts', failures],
  ['src/watch/transfer.ts', failures],
  ['src/watch/transfer-parts.ts', failures],
  ['src/code/difference.ts', 'in English for the command line; `words` says it to the screens'],
  ['src/code/expected.ts', 'in English for the command line and faults of maker files; `words` says it to the screens'],
  ['src/case/skipped.ts', 'failures, said in other languages by their codes'],
  ['src/span/calendar.ts', 'dates in English for the command line; `words` says them to the screens'],
]);
/** A name of several words that is a key, kept in looks: no screen shows it. */
const keys = / day of year$/;

describe('no sentence stands outside the languages', () => {
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

  it('notices what a screen writes into its own markup', () => {
    const code = 'export const Note = () => <p class="muted hint no-words">No photo was read yet.</p>;';
    expect(said(code, 'src/ui/Note.tsx')).toEqual(['src/ui/Note.tsx:1 No photo was read yet.']);
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
    ['what the console gets', "console.error('[tellstamp] the panel did not open');"],
    ['a comment', '// It dates the label, not the piece.\nexport const a = 1;'],
  ])('lets %s stand', (_, code) => {
    expect(said(code)).toEqual([]);
  });
});
