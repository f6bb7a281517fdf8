import { expect, it } from 'vitest';
import { findParts, partBeside } from '../../../src/claim/parts';
import { foldWords } from '../../../src/text';

/** The part beside the words in brackets, in the text without these. */
const beside = (marked: string) => {
  const [start, end] = [marked.indexOf('['), marked.indexOf(']') - 1];
  return partBeside(marked.replace(/[[\]]/g, ''), start, end)?.value ?? null;
};

it.each<[string, string | null]>([
  ['a [brass] zip', 'zip'],
  ['zip of [brass]', 'zip'],
  ['zip [brass] lock', 'lock'],
  ['zip, lock of [brass]', 'lock'],
  ['[brass]', null],
  // Of its own clause alone, wherever that stands.
  ['Zip torn. [Brass] all over', null],
  ['[Brass] all over. Zip torn', null],
  ['It is an old one. A [brass] zip', 'zip'],
  ['It is an old one. Zip of [brass]', 'zip'],
  // What the words name themselves is not beside them.
  ['[zip]', null],
  ['It is an old one. The [zip] here', null],
  ['It is an old one. Lock and [zip] here', 'lock'],
])('“%s”: %s', (marked, part) => expect(beside(marked)).toBe(part));

it.each<[string, string[]]>([
  ['ショルダーバッグです。', []],
  ['ショルダーが長い。', ['strap']],
  ['黒のショルダーバッグ、ショルダーは赤', ['strap']],
  ['Borsa a tracolla nera', []],
  ['Borsa con tracolla nera', ['strap']],
])('half of what a bag is called is no part of it: %s', (text, parts) => {
  expect(findParts(foldWords(text)).map(({ value }) => value)).toEqual(parts);
});
