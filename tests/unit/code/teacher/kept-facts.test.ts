import { it } from 'vitest';
import { allowedOf, readFacts, type YearPart } from '../../../../src/code/teacher/facts';
import { framesOf } from '../../../../src/code/teacher/frame';
import { readKnownDate } from '../../../../src/code/teacher/known-date';
import { keep, short } from '../said-short';
import { factsOf, known } from './framed';

/*
 * What each step of the teacher hands on to the next, whole, on lists made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/teacher/kept --update` writes it anew.
 */

it('codes and dates made ready', async () => {
  const lists = [
    'KV-0915 = 1995-01, BE; (A)12.3 = 1982; [K] 5/6 = 1990-Q3, FR, IT; {Q)1 = 2000-W52; (AB)1 = 1983; A) = 1984',
    '12-3 = 1999-12-31; 1-23 = about 1990; 123 = ..1990; 124 = 1990..; 125 = 1990..1995; 126 = 1990..1996',
    '1 = 1990 or 1991; 2 = DE; 3 = undated; 4 = 1880..2020; 5 = bought 2001, BE; 6 = spring 1999, IT, FR; 7 = soon',
    '- = 1990; ABCDEFGHIJKLMNOPQRSTUVWX = 1990; ABCDEFGHIJKLMNOPQRSTUVWXY = 1990; 8 = nonsense, DE',
    '1 = 1996; 2 = 1994; 3 = 1995; 4 = 1994; 5 = 1994-06; 6 = 1994-06-30..1994-07-03',
  ];
  const out = lists.flatMap((rows) => {
    const { facts, unusable } = readFacts(known(rows));
    return [
      rows,
      ...facts.map(({ years, ...fact }) => {
        const all = `${years[0] ?? ''}${years.length > 1 ? `–${years.at(-1)}, ${years.length}` : ''}`;
        return `  ${short(fact)}, years ${all}`;
      }),
      ...unusable.map((one) => `  not used ${short(one)}`),
    ];
  });
  await keep(out, 'facts');
});

it('the numbers that a date allows for each part of a year', async () => {
  const dates =
    '1994|1994-03|1994-03-14|1998-12-31|1999-01-01|2000-02-29|1998-W53|1996-W14|1996-Q4|1994..1996|1990-12-30..1991-01-02|1995..|..1950|DE';
  const parts: (YearPart | 'day')[] = ['month', 'week', 'sunday-week', 'quarter', 'dayOfYear', 'day'];
  const out = dates.split('|').flatMap((reads) => {
    const [fact] = factsOf(`1 = ${reads}`);
    return [
      reads,
      ...parts.map((part) => {
        const { years, choices } = allowedOf(fact!, part);
        const all = [...years].map(([number, of]) => `${number} ${of.slice(0, 4).join('+')}`);
        const few = all.length > 8 ? [...all.slice(0, 3), `and ${all.length - 6}`, ...all.slice(-3)] : all;
        return `  ${part}, ${Number(choices.toFixed(4))} of a year: ${few.join(', ')}`;
      }),
    ];
  });
  await keep(out, 'allowed');
});

it('codes laid side by side', async () => {
  const lists: [rows: string, least: number][] = [
    ['123 = 1990; 456 = 1991', 2],
    ['12 = 1990; 345 = 1991; 678 = 1992; 9012 = 1993', 2],
    ['12 = 1990; 3K5 = 1991; 67K = 1992', 2],
    ['1 = 1990; 12345678901 = 1991; 123456789012 = 1992', 1],
    ['1 = 1990; 12 = 1990; 123 = 1990; 1234 = 1990; 12345 = 1990; 123456 = 1990', 2],
    ['1 = 1990; 12 = 1990; 123 = 1990; 1234 = 1990; 12345 = 1990; 123456 = 1990; 1234567 = 1990', 2],
    ['K1 = 1990; 2KK = 1991', 1],
  ];
  const out = lists.flatMap(([rows, least]) => [
    `${rows}, at least ${least}`,
    ...framesOf(factsOf(rows), least).map(
      ({ facts, length, changing, rest }) =>
        `  ${changing} ${length}, rest ${rest.min}–${rest.max}: ${facts.map(({ core, rest }) => `${core}|${rest}`).join(' ')}`,
    ),
  ]);
  await keep(out, 'frames');
});

it('dates in words at their limits', async () => {
  const dates = `spring 1994|summer of 1994|autumn 994|fall 2994|fall 3994|winter 1994|bought spring 1994|1994-13|1994, 1995|
    not before 1997|nicht vor 1997|not before March 1997|pas avant 1997|no antes de 1997|niet voor 1997|non prima del 1997|bought not before 1997|bought after 1997|gekauft seit 1997
    |about 1996|um 2000|bought about 1996|about February 1996|receipt 1996|Rechnung vom 3.4.1996|03/04/1996|04/13/1996|1990s|bought 1990s
    |20 years old|yesterday|3 April|1996 to 1994|1994..1996|1996..1994|1994, DE|DE|undated|nothing|${'x'.repeat(76)}1994|${'x'.repeat(77)}1994|${' '.repeat(80)}1994
    |購入 1994|1994年購入|lot 12, 1994|1994 lot 12|1994 or 1996|1994|`;
  const out = dates
    .split('|')
    .map((words) => words.trim())
    .map((words) => `${words}: ${readKnownDate(words)} | ${readKnownDate(words, '1995-06-15')}`);
  await keep(out, 'dates');
});
