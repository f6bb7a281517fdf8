import { expect, it } from 'vitest';
import { partBeside } from '../../../src/claim/parts';

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
