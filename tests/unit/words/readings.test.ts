import { afterEach, expect, test } from 'vitest';
import type { PartTells, ReadingReason } from '../../../src/code';
import { decodeText } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import { codeRows } from '../../../src/ui/code-rows';
import { chooseLanguage, sayReadingReason, sayTells } from '../../../src/words';

const read = (code: string) => decodeText(code, { makers: builtInMakers, maker: ['Ondrasse'], now: '2026-03-01' });

afterEach(() => chooseLanguage('en'));

test('why a code reads so, in both languages', () => {
  const { reasons } = read('KV0915').readings[0]!;
  expect(reasons.map((reason) => sayReadingReason(reason, 'en'))).toEqual([
    'workshop “KV”: Belgium',
    'month “01”: January',
    'year “95”: 1995',
    "the century or decade follows from the system's period: 1990 to 2006",
  ]);
  expect(reasons.map((reason) => sayReadingReason(reason, 'de'))).toEqual([
    'Werkstatt „KV“: Belgien',
    'Monat „01“: Januar',
    'Jahr „95“: 1995',
    'Jahrhundert oder Jahrzehnt folgen aus der Zeit der Schreibweise: 1990 bis 2006',
  ]);
});

test('a code out of time says so in both languages', () => {
  const said = (code: string, language: 'en' | 'de') =>
    read(code)
      .readings[0]!.reasons.map((reason) => sayReadingReason(reason, language))
      .at(-1);
  expect(said('915', 'en')).toBe("code's system not in use at its own date: it was used 1980 to 1983");
  expect(said('915', 'de')).toBe(
    'die Schreibweise war zu ihrem eigenen Datum nicht in Gebrauch: sie galt 1980 bis 1983',
  );
  expect(said('ZM0911', 'en')).toBe('workshop not in use at that date: it worked 1994 to 2012');
  expect(said('LD1305', 'de')).toBe('das Datum liegt in der Zukunft');
});

test('the rows of a code follow the chosen language, the year first and each meaning once', () => {
  const rows = () => codeRows(read('KV0915').readings[0]!).map(({ characters, says }) => [characters, says]);
  expect(rows()).toEqual([
    ['···9·5', 'year 1995'],
    ['··0·1·', 'January'],
    ['KV····', 'workshop KV: Belgium'],
  ]);
  chooseLanguage('de');
  expect(rows().map(([, says]) => says)).toEqual(['Jahr 1995', 'Januar', 'Werkstatt KV: Belgien']);
});

const tells: [PartTells, string, string][] = [
  [{ kind: 'quarter', number: 2 }, 'quarter 2', '2. Quartal'],
  [{ kind: 'week', number: 31 }, 'week 31', 'Woche 31'],
  [{ kind: 'day', number: 4 }, 'day 4', 'Tag 4'],
  [{ kind: 'day-of-year', number: 40 }, 'day 40 of the year', '40. Tag des Jahres'],
  [{ kind: 'serial', number: 17 }, 'number 17', 'Nummer 17'],
  [{ kind: 'plant', place: null }, 'place not known', 'Ort nicht bekannt'],
  [{ kind: 'check' }, 'agrees with the other characters', 'passt zu den anderen Zeichen'],
  [{ kind: 'fixed' }, 'always there', 'steht immer da'],
  [{ kind: 'any' }, 'not explained', 'nicht erklärt'],
];
test.each(tells)('%o', (one, english, german) => {
  expect([sayTells(one, 'en'), sayTells(one, 'de')]).toEqual([english, german]);
});

test('each other reason in both languages', () => {
  const reasons: ReadingReason[] = [{ kind: 'check-agrees' }, { kind: 'in-table' }];
  expect(reasons.map((one) => sayReadingReason(one, 'en'))).toEqual([
    'the check character agrees',
    'the number lies in a range of the table',
  ]);
  expect(reasons.map((one) => sayReadingReason(one, 'de'))).toEqual([
    'das Prüfzeichen passt',
    'die Nummer liegt in einem Bereich der Tabelle',
  ]);
});
