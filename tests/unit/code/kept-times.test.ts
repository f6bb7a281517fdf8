import { it } from 'vitest';
import { type Reading, readStated, readsAs, readsOf, spanReads } from '../../../src/code';
import { fullSundayWeekSpan, weekSpan } from '../../../src/code/week';
import { yearsMeant, yearsOf, yearValues } from '../../../src/code/year';
import type { Layout } from '../../../src/maker/types';
import type { Span } from '../../../src/span';
import { keep, short } from './said-short';
import { laidOut, span } from './tried';

/*
 * What each step of the decoder hands on to the next, whole, on inputs made to meet its limits. Where it changes on
 * purpose, `npm test -- unit/code/kept --update` writes it anew.
 */

it('years that a code may mean', async () => {
  const periods: Span[] = [
    span('1990-01-01', '1999-12-31'),
    span('1990-01-01', null),
    span('1940-01-01', null),
    span('1985-06-01', '1985-09-01'),
    span(null, '1960-12-31'),
    span(null, null),
    span('1890-01-01', '2020-12-31'),
    span('2040-01-01', null),
  ];
  const slots: [Layout[number], string[]][] = [
    [{ year: 4 }, ['1994', '2094']],
    [{ year: 2 }, ['94', '00', '40', '39']],
    [{ year: 1 }, ['4', '0']],
    [{ year: 'cycle', letters: 'ABCDE', first: 1987 }, ['A', 'D', 'E']],
  ];
  const out = periods.flatMap((used) => [
    `${used.from} to ${used.to}: ${[undefined, 1980, 1995, 2026, 2100].map((latest) => short(yearsOf(used, latest))).join(' ')}`,
    ...slots.flatMap(([slot, values]) => {
      const group = laidOut([slot]).groups.get('year')!;
      return `  ${short(slot)} ${yearValues(group, used)} or ${yearValues(group, used, 2026)} values: ${values.map((value) => `${value} ${yearsMeant(group, value, used).join('+')} or ${yearsMeant(group, value, used, 2026).join('+')}`).join(', ')}`;
    }),
  ]);
  await keep(out, 'years-meant');
});

it('weeks from Sundays, and of ISO 8601', async () => {
  const out = [1999, 2000, 2003, 2006, 2010, 2022].map((year) =>
    [0, 1, 2, 51, 52, 53, 54]
      .map(
        (week) =>
          `${year}-${week} ${fullSundayWeekSpan(year, week)?.from} ${weekSpan(year, week, 'iso')?.from} ${short(weekSpan(year, week, 'first-full-sunday'))}`,
      )
      .join('\n'),
  );
  await keep(out, 'weeks');
});

it('what an example says that a code reads', async () => {
  const words = `1995|1995-01|1995-01-21|1996-W14|1996-w01|1996-W54|1996-Q2|1996-Q5|1990-03..1993|1990..|..1993|..|1990 to 1993|1990/1993
    |1990 or 1991|1990|1991, BE|BE|BE FR|BENL|BEN|BE, FR|undated|Undated, BE|nothing|NOTHING||, ,|1995, soon|1995-13|be`;
  const reading = { span: span('1995-01-01', '1995-01-31'), places: ['BE'] } as Reading;
  const none = { span: null, places: [] as string[] } as Reading;
  const out = words.split(/(?<! or 1991)\|/).map((one) => {
    const stated = readStated(one.trim());
    const fits =
      'unknown' in stated
        ? ''
        : `, of January 1995 in BE ${readsAs(reading, stated)}, of none ${readsAs(none, stated)}`;
    return `${one.trim()}: ${short(stated)}${fits}`;
  });
  const spans: Span[] = [
    span('1990-01-01', null),
    span(null, '1990-12-31'),
    span(null, null),
    span('1990-01-01', '1991-12-31'),
    { from: '1990-03-04', to: '1990-03-04', precision: 'day' },
    { from: '1990-03-01', to: '1990-03-31', precision: 'month' },
    { from: '1990-01-01', to: '1990-12-31', precision: 'year' },
    { from: '1990-04-01', to: '1990-06-30', precision: 'quarter' },
    { from: '1990-10-01', to: '1990-12-31', precision: 'quarter' },
    { from: '1990-01-01', to: '1990-01-07', precision: 'week' },
    { from: '1998-12-28', to: '1999-01-03', precision: 'week' },
    { from: '2000-01-03', to: '2000-01-09', precision: 'week' },
    { from: '1990-01-07', to: '1990-01-13', precision: 'week' },
  ];
  await keep(
    [
      ...out,
      ...spans.map((one) => `${short(one)} ${spanReads(one)} | ${readsOf({ span: one, places: ['BE', 'FR'] })}`),
      readsOf({ span: null, places: [] }),
    ],
    'stated',
  );
});
