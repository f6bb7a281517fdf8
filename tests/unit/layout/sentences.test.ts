import { describe, expect, it } from 'vitest';
import { isWordless, sentencesIn } from './sentences';
import { filesUnder } from './source-files';

const files = filesUnder('src').filter(({ path }) => isWordless(path));

const selectors = 'a selector, and no words';
const caught = 'an error that is caught and seen in the console alone';
/** Files that hold words all the same, and why. */
const allowed = new Map([
  ['src/browser/compat.ts', 'why the browser is asked for a page without a window; it shows this to nobody'],
  ['src/browser/manifest.ts', 'what a policy is written in'],
  ['src/maker/json-schema.ts', 'the published schema is in English'],
  ['src/maker/live.ts', 'names of outcomes'],
  [
    'src/place/iso.ts',
    'names of countries that Intl does not know, in English; `words` has those of the other languages',
  ],
  ['src/reader/graphics.ts', caught],
  ['src/reader/page/select-words.ts', selectors],
  ['src/reader/started-within.ts', caught],
  ['src/take/page/blocks.ts', selectors],
  ['src/ui/dossier/dossier-file.ts', 'the frame of a document, and a selector'],
  ['src/ui/makers/go-to-field.ts', selectors],
  ['src/ui/use-focus-kept.ts', selectors],
  ['src/code/difference.ts', 'in English for the command line; `words` says it to the screens'],
  ['src/code/expected.ts', 'in English for the command line and faults of maker files; `words` says it to the screens'],
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
    ['what a failure says', "export const a = { code: 'no-such', what: 'the photo is too small' };"],
    ['what to do about it', "export const a = { code: 'no-such', remedy: 'Ask for a larger photo.' };"],
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
    ['an error that nobody is told', "throw new Error('a row from memory is never hard');"],
    ['a key', "export const a = { kind: 'dates-label' };"],
    ['what the console gets', "console.error('[tellstamp] the panel did not open');"],
    ['a comment', '// It dates the label, not the piece.\nexport const a = 1;'],
  ])('lets %s stand', (_, code) => {
    expect(said(code)).toEqual([]);
  });
});
