import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { findMarks, type MarkSays, notedRows, rowNames } from '../../../src/mark';
import { sayCaution, sayMark } from '../../../src/words';

const tables = new URL('../../../src/mark/tables/', import.meta.url);
const rowsOfTables = readdirSync(tables).flatMap((file) => {
  const { rows = [] } = JSON.parse(readFileSync(new URL(file, tables), 'utf8')) as { rows?: { id?: string }[] };
  return rows.flatMap(({ id }) => id ?? []);
});

test('every row of the tables is named, and every name has its row', () => {
  expect([...rowsOfTables].sort()).toEqual([...rowNames].sort());
});

const said: [text: string, english: string, german: string][] = [
  [
    'Made in West Germany',
    '“West Germany” was written on goods from 23 May 1949',
    '„West Germany“ auf Waren: ab 23. Mai 1949',
  ],
  [
    'U.S. Pat. No. 2,544,409',
    'US patent 2,544,409 was granted in 1951, so what carries it is no older',
    'US-Patent 2.544.409 wurde 1951 erteilt; was es trägt, ist nicht älter',
  ],
  [
    'Des. Pat. D140,435',
    'US design patent D140,435 was granted no earlier than 1903',
    'US-Designpatent D140.435 wurde frühestens 1903 erteilt',
  ],
  [
    'Pat. Nov. 25, 1851',
    'A patent of 25 November 1851 is named, so what carries it is no older',
    'Ein Patent vom 25. November 1851 wird genannt; was es trägt, ist nicht älter',
  ],
  [
    'diamond mark: top E, left E, right W, bottom G',
    'No design was registered under these letters: W with G stood for 1 to 6 March 1878 only',
    'Unter diesen Buchstaben wurde kein Muster eingetragen: W mit G stand nur für den 1. bis 6. März 1878',
  ],
  [
    'London, date letter A',
    'London used the date letter “A” in 1876 to 1877, 1936 to 1937, 1975',
    'London verwendete den Jahresbuchstaben „A“: 1876 bis 1877, 1936 bis 1937, 1975',
  ],
  [
    'date letter A',
    'The date letter “A” gives no year, because no office is named',
    'Der Jahresbuchstabe „A“ ergibt kein Jahr, denn es ist kein Prüfamt genannt',
  ],
  [
    'silver 925',
    '925 is a claim of fineness for silver, and dates nothing by itself',
    '925 behauptet einen Feingehalt von Silber und ergibt allein kein Jahr',
  ],
  [
    'RN 13670',
    'RN 13670 was given to a company in 1959 or later, so the label is no older',
    'RN 13670 wurde 1959 oder später an ein Unternehmen vergeben; das Etikett ist nicht älter',
  ],
];

test.each(said)('“%s” in both languages', (text, english, german) => {
  const { says } = findMarks(text, { foundIn: 'photo', photoId: 'p1' })[0]!;
  expect([sayMark(says, 'en'), sayMark(says, 'de')]).toEqual([english, german]);
});

test('a country of several on one row is named in its language', () => {
  const { says } = findMarks('Made in Croatia', { foundIn: 'listing', photoId: null })[0]!;
  expect(sayMark(says, 'en')).toContain('“Croatia”');
  expect(sayMark(says, 'de')).toContain('„Kroatien“');
});

test('a sentence that a look of before keeps is said as it stands', () => {
  expect(sayMark('A patent of before', 'de')).toBe('A patent of before');
});

describe('nothing English is left in German', () => {
  const english = /\b(?:was|were|the|of|and|label|labels|granted|number)\b/i;
  const span = { from: '1960-01-01', to: null, precision: 'range' as const };
  test('rows', () => {
    const rows = rowNames.map((row): MarkSays => ({ kind: 'row', row, place: null, span, normal: false }));
    const left = rows.map((says) => sayMark(says, 'de')).filter((words) => english.test(words.replace(/„[^“]*“/g, '')));
    expect(left).toEqual([]);
  });
  test('cautions', () => {
    const left = notedRows.map((row) => sayCaution({ kind: 'row', row }, 'de')).filter((words) => english.test(words));
    expect(left).toEqual([]);
  });
});
