import { expect, it } from 'vitest';
import type { LayoutSays } from '../../../src/code';
import { sayLayoutPart } from '../../../src/words';

it.each<[LayoutSays, string, string]>([
  [
    { kind: 'year-letter', first: 1970, place: 1, letters: 'ABDE', skipped: 'C' },
    'year letter from 1970 in place 1, letters ABDE; C taken to be skipped',
    'Jahresbuchstabe ab 1970 an Stelle 1, Buchstaben ABDE; vermutlich ausgelassen: C',
  ],
  [
    { kind: 'year-letter', first: 1970, place: 1, letters: 'ABCD', skipped: '' },
    'year letter from 1970 in place 1, letters ABCD; none taken to be skipped',
    'Jahresbuchstabe ab 1970 an Stelle 1, Buchstaben ABCD; vermutlich keiner ausgelassen',
  ],
  [
    { kind: 'year-letter', first: 1970, place: 2, letters: 'ABCD', skipped: null },
    'year letter from 1970 in place 2, letters ABCD',
    'Jahresbuchstabe ab 1970 an Stelle 2, Buchstaben ABCD',
  ],
  [{ kind: 'year-digit', place: 3 }, 'year of one digit in place 3', 'einstelliges Jahr an Stelle 3'],
  [
    { kind: 'two-digits', of: 'year', places: [3, 5] },
    'year of two digits in places 3 and 5',
    'zweistelliges Jahr an den Stellen 3 und 5',
  ],
  [{ kind: 'two-digits', of: 'week', places: [2, 1] }, 'week in places 2 and 1', 'Woche an den Stellen 2 und 1'],
  [
    { kind: 'four-digits', place: 1, reversed: true },
    'year of four digits from place 1, backwards',
    'vierstelliges Jahr ab Stelle 1, rückwärts geschrieben',
  ],
  [{ kind: 'day-of-year', place: 2, reversed: false }, 'day of the year from place 2', 'Tag des Jahres ab Stelle 2'],
  [
    { kind: 'one-of', of: 'quarter', characters: 'ABCD', place: 2 },
    'quarter as one of ABCD in place 2',
    'Quartal als eines der Zeichen ABCD an Stelle 2',
  ],
  [{ kind: 'check', rule: 'luhn' }, 'check character (luhn) at the end', 'Prüfzeichen (luhn) am Ende'],
  [{ kind: 'plant', from: 1, to: 2 }, 'workshop in places 1 to 2', 'Werkstatt an den Stellen 1 bis 2'],
  [{ kind: 'literal', text: 'NO' }, '“NO” stands in every code', '„NO“ steht in jedem Code'],
  [{ kind: 'serial', digits: 1 }, 'running number of one digit', 'einstellige laufende Nummer'],
  [{ kind: 'serial', digits: 4 }, 'running number of 4 digits', '4-stellige laufende Nummer'],
  [{ kind: 'unexplained', characters: 2 }, '2 characters not explained', '2 Zeichen sind nicht erklärt'],
])('a part of a layout is said in both languages: %j', (says, english, german) => {
  expect([sayLayoutPart(says, 'en'), sayLayoutPart(says, 'de')]).toEqual([english, german]);
});
