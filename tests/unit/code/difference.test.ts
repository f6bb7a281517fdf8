import { expect, test } from 'vitest';
import { type Difference, differencesBetween, differenceWords } from '../../../src/code';
import { differencesSaid } from '../../../src/words/de/codes';
import { kitFor } from '../../../src/words/kit';

const words = (read: string, near: string) => differencesBetween(read, near)?.map(differenceWords);

test('what tells a near code from the one that was read is said character by character', () => {
  expect(words('M81097', 'MB1097')).toEqual(['"8" in place 2 read as "B", which look alike']);
  expect(words('KV091S', 'KV0915')).toEqual(['"S" in place 6 read as "5", which look alike']);
  expect(words('KV0915', 'KV915')).toEqual(['"0" in place 3 left out']);
  expect(words('KV915', 'KV0915')).toEqual(['"0" added after place 2']);
});

test('the same text is no other code', () => {
  expect(differencesBetween('MB1097', 'MB1097')).toBeNull();
  expect(differencesBetween('MB 1097', 'MB1097')).toBeNull();
});

test('what differs in too much is not told one by one', () => {
  expect(differencesBetween('XXXX', 'MB1097')).toEqual([]);
});

test('German says it in German', () => {
  const all: Difference[] = [
    { kind: 'other', was: '8', is: 'B', place: 2, alike: true },
    { kind: 'left-out', was: '0', place: 3 },
    { kind: 'added', is: '0', place: 2 },
  ];
  expect(differencesSaid(all, kitFor('de'))).toBe(
    ' („8“ an Stelle 2 als „B“ gelesen, sie sehen sich ähnlich; „0“ an Stelle 3 weggelassen; „0“ nach Stelle 2 ergänzt)',
  );
  expect(differencesSaid([], kitFor('de'))).toBe('');
});
