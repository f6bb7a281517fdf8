import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { digestOf } from '../../digest';
import { farTurnsOf } from '../../turning';
import { datedShort, now } from './readers';

/*
 * Dates in every form in which people write them, and where the answer turns as the number or the day of the page
 * moves. Where it changes on purpose, `npm test -- unit/text/kept --update` writes it anew.
 */

const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/forms-${name}.txt`);

const dated = (said: string, language = 'en', at = now) =>
  text.parseDates(said, { language, now: at }).map(datedShort).join('; ') || 'nothing';
/** Without the number itself, so that years of one kind are one run. */
const kindOf = (said: string, language?: string) =>
  dated(said, language)
    .replaceAll(/\d{4}-\d\d-\d\d/g, (day) => day.slice(4))
    .replaceAll(/“[^”]*”/g, '');

it('which years are read as such', async () => {
  const forms = [
    '1',
    'made 1',
    '1年',
    '1-04-03',
    '03/1',
    'April 1',
    '3 April 1',
    'April 3, 1',
    '3.4.1',
    'about 1',
    '1s',
    'the 1s',
    'since 1',
    '1 €',
    '1/04',
    '1-13-01',
    '昭和1年',
  ];
  const out = forms.flatMap((form) => [
    form,
    ...farTurnsOf(1000, 2300, form.endsWith('1s') ? 10 : 13, (year) => kindOf(form.replace('1', String(year)))).map(
      (turn) => `  ${turn}`,
    ),
  ]);
  await keep(out, 'years');
});

it('what years, days and months of one or two figures are', async () => {
  const forms = [
    "'1",
    '3.4.1',
    '3/4/1',
    '1/4/2005',
    '4/1/2005',
    '2005-1-03',
    '2005-04-1',
    '1 April 2005',
    'April 1, 2005',
    '1 April',
    'April 1',
    "made in '1",
    '18 May 1',
    '1s',
    "the '1s",
    '1 years old',
    'vor 1 jahren',
    '1 months ago',
    '平成1年',
    '昭和1年',
    '1994-1',
    '1980-1',
    '1980s/1',
    'années 1',
    '令和1年3月',
    '1994年1月',
    '1994年3月1日',
    '1年前の品',
    '1 weeks ago',
    '1 days ago',
    'over 1 years old',
    '1th century',
    '2005-04-03T1:30:00-05:00',
    '2005-04-03T20:30:00-1:00',
  ];
  const said = (form: string, number: number) => {
    const figures = form.includes(':') || form.includes("'") ? 2 : 1;
    return form.replace(/(?<!\d)1(?!\d)/, String(number).padStart(figures, '0'));
  };
  const all = Array.from({ length: 130 }, (_, number) => number);
  const out = forms.flatMap((form) => [
    form,
    ...[0, 1, 12, 13, 28, 31, 32, 36, 60, 94].map((number) => `  ${number} ${dated(said(form, number))}`),
    `  ${['en', 'de', 'en-US'].map((language) => digestOf(all.map((number) => dated(said(form, number), language)))).join(' ')}`,
  ]);
  await keep(out, 'days');
});

it('words of time, as the day of the page moves', async () => {
  const forms = [
    'yesterday',
    'last year',
    'two months ago',
    'last week',
    '3 April',
    '29 February',
    "'27",
    'the 20s',
    'Monday 15:12',
    '20 years old',
    'since last year',
    'the sixties',
    'early 90s',
    'mid-1980s',
    'late 1970s',
  ];
  const days = [
    '1999-12-31',
    '2000-01-01',
    '2024-02-29',
    '2026-04-02',
    '2026-04-03',
    '2026-11-25',
    '2035-06-15',
    '2104-02-28',
    '1904-02-28',
  ];
  await keep(
    forms.flatMap((form) => [form, ...days.map((day) => `  ${day} ${dated(form, 'en', day)}`)]),
    'today',
  );
});
