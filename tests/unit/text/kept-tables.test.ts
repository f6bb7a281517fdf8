import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { auctionRole } from '../../../src/text/auction-words';
import * as dateWords from '../../../src/text/date-words';
import { dimensionLetters, lettersOf } from '../../../src/text/measure-words';
import { isMenuWord, isOfferControl } from '../../../src/text/offer-words';
import * as priceTable from '../../../src/text/price-table';
import { datedShort, now } from './readers';

/*
 * Every word of the tables in code, beside what it is said of. Where it changes on purpose,
 * `npm test -- unit/text/kept --update` writes it anew.
 */

const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/tables-${name}.txt`);
/** A pattern of a table as somebody would write it: what may be left out stands, and of several the first. */
const written = (pattern: string) =>
  pattern
    .replace(/\(\?:([^()|]*)[^()]*\)\??/g, '$1')
    .replaceAll('[- ]', ' ')
    .replace(/(.)\?/gu, '$1')
    .replace(/[*#]/g, '');
const wordsOf = (rows: readonly string[], divide: RegExp) =>
  rows.flatMap((row) => row.split(divide)).filter((words) => words !== '');

it('each word that stands beside a sum', async () => {
  const short = (said: string) =>
    text
      .parsePrices(said, { language: 'en' })
      .map(
        ({ price, caveats }) =>
          `${price.kind} ${price.minor}${caveats.includes('includes-shipping') ? ' with postage' : ''}`,
      )
      .join(', ') || 'nothing';
  const out = Object.entries(priceTable).flatMap(([name, rows]) => [
    name,
    ...wordsOf(rows, /, /).map((words) => {
      const word = written(words);
      return `  ${words}: ${[`${word} €100`, `${word}€100`, `€100 ${word}`, `${word} 100`, `Orders ${word} €50, €20`].map(short).join(' | ')}`;
    }),
  ]);
  await keep(out, 'sums');
});

it('each word that stands beside a date', async () => {
  const short = (said: string) =>
    text.parseDates(said, { language: 'en', now }).map(datedShort).join(', ') || 'nothing';
  const {
    aboutWords,
    beforeWords,
    untilWords,
    afterWords,
    rangeWords,
    tens,
    namedDecade,
    beforeDecade,
    behindDecade,
    partOfDecade,
    eras,
    japaneseEras,
    months,
    weekdays,
  } = dateWords;
  const around = { aboutWords, beforeWords, untilWords, afterWords, ...partOfDecade };
  const out = [
    ...Object.entries(around).flatMap(([name, rows]) =>
      wordsOf(rows, /[|]/).map((words) => {
        const word = written(words);
        return `${name} ${words}: ${[`${word} 1994`, `${word} 1980s`, `1980年代${word}`, `${word} the 80s`].map(short).join(' | ')}`;
      }),
    ),
    ...wordsOf(rangeWords, /[|]/).map(
      (words) => `range ${words}: ${short(`1990 ${written(words)} 1994`)} | ${short(`from 1990${written(words)}1994`)}`,
    ),
    ...tens.flatMap((row, language) =>
      row.split(', ').map((words) => {
        const word = written(words);
        const named = namedDecade[language]!.replace('#', word).replace('yies', 'ies');
        return `tens ${words}: ${[written(named), `${word} years old`, `${word} Jahre alt`].map(short).join(' | ')}`;
      }),
    ),
    ...wordsOf(beforeDecade, /[|]/).map((words) => `before a decade ${words}: ${short(`${written(words)} 80`)}`),
    ...wordsOf(behindDecade, /[|]/).map((words) => `behind a decade ${words}: ${short(`80${written(words)}`)}`),
    ...eras.flatMap(({ words }) => wordsOf(words, /[|]/).map((one) => `era ${one}: ${short(written(one))}`)),
    ...japaneseEras.map(
      ({ name }) =>
        `era ${name}: ${[`${name}期`, `${name}元年`, `${name}2年`, `${name}20年代`, `${name}99年`].map(short).join(' | ')}`,
    ),
    ...[...months].map(([name, number]) => `month ${name} ${number}: ${short(`3 ${name} 2005`)}`),
    ...[...weekdays].map(([name, number]) => `weekday ${name} ${number}: ${short(`${name} 15:12`)}`),
  ];
  await keep(out, 'dates');
});

it('each letter for a side, in each language, and each word of an offer', async () => {
  const sides = Object.keys(dimensionLetters).map(
    (letter) =>
      `${letter}: ${Object.keys(lettersOf)
        .map(
          (language) =>
            `${language} ${[`${letter} 30 cm`, `30 cm (${letter})`, `${letter}30 h20`]
              .map(
                (said) =>
                  text
                    .parseMeasures(said, language)
                    .map(({ measure }) => measure.dimension)
                    .join('+') || '-',
              )
              .join(' ')}`,
        )
        .join(', ')}`,
  );
  const labels = [
    'Current bid',
    'Starting bid:',
    'Buy it now',
    'Next bid',
    'Estimate',
    'Reserve',
    'Price',
    'aktuelles Gebot',
    'Sofort-Kaufen',
    'Enchère actuelle',
    'Current bid of the day for all',
    '',
    'a'.repeat(51),
    '現在価格',
    '即決価格',
  ];
  const controls = [
    'Buy now',
    'Add to cart',
    'Add to basket',
    'Make an offer',
    'In den Warenkorb',
    'Acheter',
    'Read more',
    'Menu',
    'Home',
    'Kaufen',
    '購入',
    '',
    'Buy now and then some more words behind it',
    'Sell',
    'Help',
    'Log in',
  ];
  await keep(
    [
      ...sides,
      ...labels.map((label) => `${label.slice(0, 30)}: ${auctionRole(label)}`),
      ...controls.map((control) => `${control}: ${isOfferControl(control)} ${isMenuWord(control)}`),
    ],
    'letters',
  );
});
