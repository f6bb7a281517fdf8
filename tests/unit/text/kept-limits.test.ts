import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { findAmounts } from '../../../src/text/amount';
import { auctionRole } from '../../../src/text/auction-words';
import { isOfOneVariant } from '../../../src/text/availability';
import { decimalConvention, exponentOf, settleCurrency, signAt, signBefore } from '../../../src/text/currency';
import { lastPast } from '../../../src/text/date';
import { dayOf, fullYear, fullYears } from '../../../src/text/date-parts';
import { afterLast } from '../../../src/text/ends';
import { minorUnits, readNumber } from '../../../src/text/number';
import { isOfferControl } from '../../../src/text/offer-words';
import { traderBehind } from '../../../src/text/trader';
import { limitLines } from './limit-lines';
import { datedShort, priced, readers, sized } from './readers';

/*
 * Lines at the limits of each reader: the last that is read and the first that is not, one and many, the first against
 * the last. Where it changes on purpose, `npm test -- unit/text/kept --update` writes it anew.
 */

const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/limits-${name}.txt`);
const inShort: Record<string, (found: never) => string> = { price: priced, measure: sized, date: datedShort };
const short = (value: unknown) => JSON.stringify(value)?.replaceAll('"', '') ?? 'nothing';

it.each(Object.entries(limitLines))('what is found at the limits of a %s', async (name, lines) => {
  const out = lines.flatMap((line) => {
    const [, language = 'en', said = ''] = /^(?:([a-z]{2}(?:-Latn)?(?:-[A-Z]{2})?):)?(.*)$/s.exec(line)!;
    const say = (inShort[name] ?? short) as (one: unknown) => string;
    const found = readers[name]!(said, language).map((one) => say(one));
    return `${line.replaceAll('\n', '⏎')}: ${found.join('; ') || 'nothing'}`;
  });
  await keep(out, name.replaceAll(' ', '-'));
});

it('numbers, signs and what they are worth', async () => {
  const habits = (convention: '.' | ',' | null, decimals = 2, spacedDecimals = false) => ({
    convention,
    decimals,
    spacedDecimals,
  });
  const numbers = `1|12|1.2|1.23|1.234|1234.567|12.345|0.234|.234|,234|.5|,5|.|,|x|1.234,5|1,234.5|1.234.567|1.23.456|1,23,456|1,23,45|1.2.3|1.234.56
    |1'234|1'23|1234'567|1 234|1 23|1234 567|1 234 567|1 234.50 100|12.50 100|1 234,5|1.234 567|1,234'567|1 234 5|1.234,567.8|123456789012345|1234567890123456|119. 95|119, 95|119. 955|119. 9
    |1.234.5678|12.34.567|1234.567.890|1'234'567|1.234'567.89|1 234.567 890`;
  const settings = [
    habits(null),
    habits('.'),
    habits(','),
    habits(null, 0),
    habits(null, 3),
    habits('.', 3),
    habits(',', 3),
    habits(null, 2, true),
  ];
  const out = numbers
    .split(/\n?\s*\|/)
    .map(
      (one) =>
        `${one.trim()}: ${[...new Set(settings.map((setting) => short(readNumber(one.trim(), 0, setting))))].join(' ')}`,
    );
  const minors = [
    '0',
    '1',
    '1.5',
    '1.004',
    '1.005',
    '1.0049',
    '.5',
    '90071992547409.91',
    '90071992547409.92',
    '',
    '12.',
    '0.999',
  ].map((one) => `${one} ${[0, 2, 3].map((exponent) => minorUnits(one, exponent)).join(' ')}`);
  await keep([...out, ...minors], 'numbers');
});

it('amounts with their signs', async () => {
  const lines = `€ 5|5 €|5  €|5   €|€  5|€   5|.€.5|EUR US$ 20|US$ EUR 20|$ US$ 20|£ 35€ 99|35€ 99|35€ 99.5|35 £ 99|35kr 99|1.5€ 99|35€ 99 kg|35€99|50,- Kč|50.–|50,-- €|50, -- €|5-|Fr. 5|S/. 5|kr.500|S/.500|$.50
    |1. €|a5 €|#5 €|5a €|あ5€|円5|5% €|:5|5:30|5/6|5 万|5万円|5万 5千円|1.5万5千円|2万3500円|2万350円|1 50 €|10 50 €|01 50 €|1 2 50 €|1 2 3 4 50 €|x 10 50 €|-10 50 €|(2  850 €|a:  2  850 €|a:   2  850 €
    |price 10, 2  850 €|2,  850 €|2 .850 €|€ 28 50|€ 28  50|€ 28,50 5|€ 285 50|€ 2850 50|€ 2.5 50|€ 28 50 kg|€ 28 5|€ 28 500|€ 28 5000|€ 28 50x|€5 €6|5 € 6 €|€ 5 6 €|5 €|
    |¥1.299|¥ 1,299|1.299|kr 5 kr|5 EUR EUR|5 EUR 6|5 EUR.6|EUR 5 £.5|SGD$ 5|NZD $5|C$ 5|5 $ NZ`;
  const out = lines
    .split(/\n?\s*\|/)
    .map(
      (one) =>
        `${one}: ${short(findAmounts(one, {}, false))} field ${short(findAmounts(one, { currency: 'JPY' }, true))}`,
    );
  await keep(out, 'amounts');
});

it('signs of money, and what settles them', async () => {
  const signs =
    'EUR|eur|Eur|€|$|US$|$ US|A$|$A|AU$|$ AU|UK£|£ UK|XX$|kr|KR|Kr.|kr.|L|l|MK|KSh|Ksh|zł|Fr.|Fr|fr.|Schweizer Franken|swiss francs|euros|euro|円|¥|元|try|TRY|top|all|ALL|R|r|R$|pounds|quid|bucks|DM|DEM|BTC|AAA|Kč|lei|.'.split(
      '|',
    );
  const out = signs.map((sign) => {
    const around = `5 ${sign} x`;
    const [at, before] = [signAt(around, 2, false), signBefore(around, 2 + sign.length, true)];
    return `${sign}: ${short(at)} any ${short(signAt(around, 2, true))} before ${short(before)} in a word ${short(signAt(`${sign}x`, 0, true))} ${short(signBefore(`x${sign}`, sign.length + 1, true))}`;
  });
  const hints = [
    {},
    { currency: 'CAD' },
    { domain: 'shop.ca' },
    { domain: 'shop.uk' },
    { language: 'en-CA' },
    { language: 'en' },
    { language: 'sv' },
    { language: 'zh-Hans-CN' },
    { language: 'ja', domain: 'x.ca' },
    { currency: 'XXX', domain: 'x.ca', language: 'en-GB' },
  ];
  const settled = [['USD', 'CAD', 'AUD'], ['GBP', 'EGP'], ['SEK', 'NOK', 'DKK'], ['JPY', 'CNY'], ['EUR'], []].map(
    (candidates) =>
      `${candidates.join(' ')}: ${hints.map((hint) => short(settleCurrency(candidates, hint))).join(' ')}`,
  );
  const places = ['en', 'de', 'de-CH', 'fr-CH', 'en-ZA', 'de-LI', 'xx', 'x', '', 'ar-EG', 'en-IN'];
  const domains = ['shop.de', 'shop.uk', 'shop.ch', 'shop.com', 'shop.zz', 'localhost', 'shop.za', 'SHOP.FR'];
  await keep(
    [
      ...out,
      ...settled,
      ...places.map((language) => `${language} ${decimalConvention({ language })}`),
      ...domains.map(
        (domain) =>
          `${domain} ${decimalConvention({ domain })} beside German ${decimalConvention({ language: 'de', domain })} beside an unknown one ${decimalConvention({ language: 'xx', domain })}`,
      ),
      ...['JPY', 'EUR', 'KWD', 'CLF', 'XXX', null].map((code) => `${code} ${exponentOf(code)}`),
    ],
    'currencies',
  );
});

it('parts of dates, labels, controls and places at their limits', async () => {
  const days = [
    [2001, 2, 28],
    [2001, 2, 29],
    [2000, 2, 29],
    [2001, 0, 1],
    [2001, 1, 0],
    [2001, 1, 1],
    [2001, 12, 31],
    [2001, 13, 1],
    [2001, 4, 31],
  ] as const;
  const dates = [
    ...days.map((day) => `${day.join('-')} ${short(dayOf(day[0], day[1], day[2]))}`),
    ...['1999-12-31', '2000-01-01', '2026-11-25'].flatMap((now) =>
      [0, 1, 26, 27, 28, 36, 37, 99].map(
        (year) => `${year} in ${now}: ${fullYear(year, now)} ${fullYears(year, now).join(' or ')}`,
      ),
    ),
    ...(
      [
        [11, 25],
        [11, 26],
        [2, 29],
        [2, 30],
        [1, 1],
        [12, 31],
      ] as const
    ).flatMap(([month, day]) =>
      ['2026-11-25', '2024-02-29', '1904-02-28'].map(
        (now) => `${month}-${day} by ${now} ${short(lastPast(month, day, now))}`,
      ),
    ),
  ];
  const controls = [
    'x'.repeat(41),
    'Buy now'.padEnd(14, '.'),
    'Buy now'.padEnd(15, '.'),
    `${'Buy now'.padEnd(40, ' ')}x`,
    'Buy   now',
    'ab buy',
    'abcd buy now efg',
    'Add to basket now please, you',
  ].map((one) => `${one} ${isOfferControl(one)}`);
  const roles = [
    'Current bid',
    'Current bid xxxxxx',
    'Current bid xxxxxxx',
    'Current bid xxxxxxxx',
    'Current bid xxxxxxxxx',
    'x Current bid',
    `Current bid${' '.repeat(40)}`,
    `Current bid ${'x'.repeat(39)}`,
    '[Current bid]:*',
    'Bid Current bid',
  ].map((one) => `${one.trim()} ${auctionRole(one)}`);
  const traders = [
    'north_gate Private seller',
    'Private seller',
    'north_gate  Private seller  ',
    'north_gatePrivate seller',
    'Private seller north_gate',
    `${'x'.repeat(105)} Private seller`,
    `${'x'.repeat(106)} Private seller`,
    'north gate private',
    'north gate Company',
    'a private b private',
  ].map((one) => `${one.replace(/x{9,}/, 'x…')} ${short(traderBehind(one))}`);
  const variants = ['Size 30 – sold out', '30', '30cm', '30 cm', '3', '300', 'a30', '30b', 'XS', 'sold out'].map(
    (one) => `${one} ${isOfOneVariant(one)}`,
  );
  const lines = [
    ': a',
    'a:b',
    'a : b',
    'a\tb',
    'a  b',
    'a \t b',
    'a\n:b',
    'a:\nb',
    '12: 30',
    'http://x',
    'https: x',
    '1.5: x',
    'a: b: c',
    'a：b',
    '【a】b',
    '【a】 b ',
    '【】b',
    'a:  ',
    'a:: b',
  ].map((one) => `${JSON.stringify(one)} ${short(text.splitLabelled(one))}`);
  const ends = [
    ['', 'x'],
    ['a1', '1'],
    ['11', '1'],
    ['1a', '1'],
    ['a11', 'a11'],
  ].map(
    ([one, sign]) =>
      `${one} ${text.withoutEnd(one!, new RegExp(`[${sign}]`))} ${afterLast(one!, new RegExp(`[${sign}]`))}`,
  );
  const own = [
    'Nice bag\nReviews (12)\nlovely\nDescription\nmine',
    'Reviews:\nx\n\ny',
    `${'Reviews'.padEnd(48, ' ')}\nx`,
    `${'Reviews'.padEnd(49, ' ')}\nx`,
    'My reviews\nx',
    'Reviews\nx\nBrand\ny',
    'Reviews\nx\n:\ny',
  ].map((one) => `${short(one)} ${short(text.sellersOwn(one))}`);
  const counts = ['plain price', 'Price'].map((hint) => short(text.parsePriceText('free', `${hint} €`)));
  await keep([...dates, ...controls, ...roles, ...traders, ...variants, ...lines, ...ends, ...own, ...counts], 'parts');
});
