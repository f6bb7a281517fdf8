import { expect, test } from 'vitest';
import { readKnownDate } from '../../../../src/code/teacher/known-date';

const all = (rows: Record<string, string | null>) => {
  for (const [words, wanted] of Object.entries(rows)) expect([words, readKnownDate(words)]).toEqual([words, wanted]);
};

test('seasons, weeks and quarters of a year are read in each language', () => {
  all({
    'spring 1994': '1994-03-01..1994-05-31',
    'summer of 1969': '1969-06-01..1969-08-31',
    'Frühjahr 1994': '1994-03-01..1994-05-31',
    'été 1994': '1994-06-01..1994-08-31',
    'autunno del 2001': '2001-09-01..2001-11-30',
    'otoño de 2001': '2001-09-01..2001-11-30',
    'najaar 2001': '2001-09-01..2001-11-30',
    '1994年秋': '1994-09-01..1994-11-30',
    'winter 1994': '1994..1995-02-28',
    'week 43 2010': '2010-W43',
    '2010, week 43': '2010-W43',
    'KW 12/1994': '1994-W12',
    'semaine 12 de 1994': '1994-W12',
    '12th week of 1994': '1994-W12',
    'Q3 2001': '2001-Q3',
    '2001 Q3': '2001-Q3',
    '3. Quartal 2001': '2001-Q3',
    'trimestre 3 2001': null,
    'week 60 1994': null,
    'week 12 1994, lot 3': null,
  });
});

test('what befalls a piece that is there bounds its making from above', () => {
  all({
    'bought in spring 1994': '..1994-05-31',
    'invoice from January 2001': '..2001-01-31',
    'repaired 1995': '..1995',
    'geschenkt 1999': '..1999',
    'réparé en 2003': '..2003',
    'bought after 1997': null,
  });
});

test('a date that is doubted is a wide one, one that is denied is none', () => {
  all({ '1996?': '1991..2001', 'I think 1996': '1991..2001', 'not 1996': null, 'not before 1996': '1996..' });
});

test('two figures are a year where they can be no day and no month', () => {
  all({
    '03/95': '1995-03',
    '12.48': '1948-12',
    '13/95': null,
    '03/31': null,
    'Mar 95': '1995-03',
    'bought 95': '..1995',
    '95': null,
  });
});

test('several dates stand only where none of them ends before it begins', () => {
  all({
    '1990 or 1992..1994': '1990 or 1992..1994',
    '1990 or 1994..1992': null,
    '1994..1992 or 1990': null,
    '1994..1994': '1994..1994',
  });
});
