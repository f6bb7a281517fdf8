import { describe, expect, it } from 'vitest';
import { parseDates } from '../../../src/text';

const now = '2026-11-25T09:00:00Z';
const read = (text: string, language: string | null = null) =>
  parseDates(text, { language, now }).map(({ span, words }) => [span.from, span.to, span.about ?? false, words]);

describe('dates as spans', () => {
  it.each<[string, unknown[]]>([
    ['March 1994', [['1994-03-01', '1994-03-31', false, 'March 1994']]],
    ['le 22 janvier 2015', [['2015-01-22', '2015-01-22', false, '22 janvier 2015']]],
    ['21. Dezember 2013', [['2013-12-21', '2013-12-21', false, '21. Dezember 2013']]],
    ['22 de enero de 2015', [['2015-01-22', '2015-01-22', false, '22 de enero de 2015']]],
    ['1er mars 2014', [['2014-03-01', '2014-03-01', false, '1er mars 2014']]],
    ['July 5, 2015', [['2015-07-05', '2015-07-05', false, 'July 5, 2015']]],
    ['c. 1994', [['1994-01-01', '1994-12-31', true, 'c. 1994']]],
    ['um 1960', [['1960-01-01', '1960-12-31', true, 'um 1960']]],
    ['vers 1960', [['1960-01-01', '1960-12-31', true, 'vers 1960']]],
    ['1994年頃', [['1994-01-01', '1994-12-31', true, '1994年頃']]],
    ['1988-1994', [['1988-01-01', '1994-12-31', false, '1988-1994']]],
    ['1988–94', [['1988-01-01', '1994-12-31', false, '1988–94']]],
    ['between 1988 and 1994', [['1988-01-01', '1994-12-31', false, '1988 and 1994']]],
    ['before 1980', [[null, '1979-12-31', false, 'before 1980']]],
    ['vor 1980', [[null, '1979-12-31', false, 'vor 1980']]],
    ['bis 1980', [[null, '1980-12-31', false, 'bis 1980']]],
    ['after 1980', [['1980-01-01', null, false, 'after 1980']]],
    ['1980年以前', [[null, '1980-12-31', false, '1980年以前']]],
    ["'94", [['1994-01-01', '1994-12-31', false, "'94"]]],
    ['3/1994', [['1994-03-01', '1994-03-31', false, '3/1994']]],
  ])('%s', (text, expected) => expect(read(text)).toEqual(expected));
});

describe('decades and eras in seven languages', () => {
  const nineties = ['1990-01-01', '1999-12-31', false];
  it.each([
    '1990s',
    "1990's",
    '90s',
    "'90s",
    'nineties',
    '1990er',
    '90er Jahre',
    '1990er Jahren',
    'neunziger Jahre',
    'années 90',
    'annees 90',
    'années 1990',
    'années quatre-vingt-dix',
    'anni novanta',
    'anni 90',
    "anni '90",
    'años 90',
    'años noventa',
    'jaren 90',
    'jaren negentig',
    '90年代',
    '1990年代',
  ])('%s is 1990 to 1999', (text) => expect(read(text)).toEqual([[...nineties, text]]));

  it.each<[string, string, string]>([
    ['early 90s', '1990-01-01', '1994-12-31'],
    ['Anfang der 90er Jahre', '1990-01-01', '1994-12-31'],
    ['début des années 80', '1980-01-01', '1984-12-31'],
    ['primi anni 80', '1980-01-01', '1984-12-31'],
    ['mid-90s', '1993-01-01', '1997-12-31'],
    ['Mitte der Neunziger', '1993-01-01', '1997-12-31'],
    ['metà anni 90', '1993-01-01', '1997-12-31'],
    ['late 1980s', '1986-01-01', '1989-12-31'],
    ['fin des années 80', '1986-01-01', '1989-12-31'],
    ["fine anni '80", '1986-01-01', '1989-12-31'],
    ['finales de los años 80', '1986-01-01', '1989-12-31'],
    ['eind jaren 80', '1986-01-01', '1989-12-31'],
    ['1980年代後半', '1986-01-01', '1989-12-31'],
    ['late 80s / early 90s', '1986-01-01', '1994-12-31'],
    ['昭和60年', '1985-01-01', '1985-12-31'],
    ['昭和60年3月', '1985-03-01', '1985-03-31'],
    ['平成元年', '1989-01-08', '1989-12-31'],
    ['昭和64年', '1989-01-01', '1989-01-07'],
  ])('%s', (text, from, to) => expect(read(text)).toEqual([[from, to, false, text]]));

  it.each([
    'vintage',
    'Vintage-Tasche',
    'antique look',
    'rétro',
    'ヴィンテージ',
    '昭和99年',
    'size 90',
    '30 x 90 cm',
    '£1994',
    'KV1994',
    '1994 cm',
  ])('%s claims no date', (text) => expect(read(text)).toEqual([]));

  it('keeps both centuries of "the 20s"', () => {
    const [found] = parseDates('from the 20s', { language: 'en', now });
    expect(found?.ambiguous?.map((span) => span.from)).toEqual(['1920-01-01', '2020-01-01']);
  });
});

describe('dates in numbers', () => {
  const days = (text: string, language: string | null) =>
    parseDates(text, { language, now }).map((date) => (date.ambiguous ?? [date.span]).map((span) => span.from));
  it.each<[string, string | null, string[][]]>([
    ['12/03/1994', null, [['1994-03-12', '1994-12-03']]],
    ['12/03/1994', 'en', [['1994-03-12', '1994-12-03']]],
    ['12/03/1994', 'en-GB', [['1994-03-12']]],
    ['12/03/1994', 'en-US', [['1994-12-03']]],
    ['12/03/1994', 'fr', [['1994-03-12']]],
    ['12.03.1994', null, [['1994-03-12']]],
    ['25/03/1994', null, [['1994-03-25']]],
    ['1994-03-12', null, [['1994-03-12']]],
    ['10-11-12', null, [['2012-11-10', '2012-10-11', '2010-11-12']]],
    ['18.10.30', 'de', [['2030-10-18', '1930-10-18']]],
    ['1994/3/12', 'ja', [['1994-03-12']]],
    ['31/02/1994', null, []],
  ])('%s in %s', (text, language, expected) => expect(days(text, language)).toEqual(expected));
});

describe('days said from the reading day', () => {
  it.each<[string, string]>([
    ['Posted yesterday', '2026-11-24'],
    ['heute', '2026-11-25'],
    ['vor 3 Tagen', '2026-11-22'],
    ['il y a 2 jours', '2026-11-23'],
    ['3 giorni fa', '2026-11-22'],
    ['hace 5 días', '2026-11-20'],
    ['2 dagen geleden', '2026-11-23'],
    ['3日前', '2026-11-22'],
    ['昨日', '2026-11-24'],
    ['5 hours ago', '2026-11-25'],
    ['15 february', '2026-02-15'],
    ['28. Dezember', '2025-12-28'],
  ])('%s', (text, day) => expect(read(text).map((row) => row[0])).toEqual([day]));
});

describe('limits of a date, and years in short', () => {
  it.each<[string, string | null, string | null]>([
    ['1990–95, as far as I know', '1990-01-01', '1995-12-31'],
    ['not later than 1985', null, '1985-12-31'],
    ['spätestens 1985', null, '1985-12-31'],
    ['au plus tard en 1985', null, '1985-12-31'],
    ['non oltre il 1985', null, '1985-12-31'],
    ['a más tardar 1985', null, '1985-12-31'],
    ['uiterlijk 1985', null, '1985-12-31'],
    ['not before 1985', '1985-01-01', null],
    ['frühestens 1985', '1985-01-01', null],
    ['pas avant 1985', '1985-01-01', null],
    ['non prima del 1985', '1985-01-01', null],
    ['no antes de 1985', '1985-01-01', null],
    ['niet voor 1985', '1985-01-01', null],
    ['before 1985', null, '1984-12-31'],
    ['before 3 April 1994', null, '1994-04-02'],
    ['avant le 3 avril 1994', null, '1994-04-02'],
  ])('%s', (said, from, to) => {
    expect(parseDates(said, { language: null, now }).map(({ span }) => [span.from, span.to])).toEqual([[from, to]]);
  });
  it('the year of one date is not the day of the next', () => {
    expect(parseDates('am 3.4.05, April 2005', { language: 'de', now }).map(({ words }) => words)).toEqual([
      '3.4.05',
      'April 2005',
    ]);
  });
});
