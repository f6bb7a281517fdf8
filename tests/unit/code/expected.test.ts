import { expect, test } from 'vitest';
import { type Expected, expectedWords } from '../../../src/code';
import { monthSpan, yearSpan } from '../../../src/span';
import { expectedSaid } from '../../../src/words/de/codes';
import { kitFor } from '../../../src/words/kit';

const german = kitFor('de');
test.each<[Expected, string, string]>([
  [{ kind: 'range', first: '01', last: '53' }, '01 to 53', '01 bis 53'],
  [{ kind: 'one-of', slot: 'month', of: '1-9 O N D' }, 'a month as one of 1-9 O N D', 'eines der Zeichen 1-9 O N D'],
  [{ kind: 'one-of', slot: 'year', of: 'ABC' }, 'one of ABC', 'eines der Zeichen ABC'],
  [{ kind: 'one-of', slot: 'year', of: 'A2' }, 'one of the characters A2', 'eines der Zeichen A2'],
  [{ kind: 'any-year' }, 'a year', 'ein Jahr'],
  [{ kind: 'letters' }, 'letters', 'Buchstaben'],
  [{ kind: 'plant', codes: 'KV, LT' }, 'a plant on file: KV, LT', 'eine Werkstatt der Datei: KV, LT'],
  [
    { kind: 'in-year', years: [1994, 2004] },
    'one that 1994 or 2004 has',
    'ein Wert, den es im Jahr 1994 oder 2004 gibt',
  ],
  [{ kind: 'in-table' }, 'a number that the table lists', 'eine Nummer aus der Tabelle'],
  [
    { kind: 'own-date', number: '0815', made: [yearSpan(1994), monthSpan(1996, 3)] },
    "a number made at the code's own date; 0815 was made 1994 or March 1996",
    'eine Nummer aus der Zeit des Codes; 0815 entstand 1994 oder März 1996',
  ],
  [{ kind: 'check', fits: 'K' }, 'K', 'K'],
  [
    { kind: 'check', fits: null },
    'none: a character before it has no value in this rule',
    'keines: ein Zeichen davor hat in dieser Regel keinen Wert',
  ],
])('%j is said in English and in German', (expected, english, inGerman) => {
  expect(expectedWords(expected)).toBe(english);
  expect(expectedSaid(expected, german)).toBe(inGerman);
});

test('words of a case of before are shown as they were written', () => {
  const older: Expected = { kind: 'as-written', words: '01 to 12' };
  expect([expectedWords(older), expectedSaid(older, german)]).toEqual(['01 to 12', '01 to 12']);
});
