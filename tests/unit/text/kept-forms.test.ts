import { expect, it } from 'vitest';
import * as text from '../../../src/text';
import { readCount } from '../../../src/text/said-number';
import { digestOf } from '../../digest';
import { turnsOf } from '../../turning';
import { now, priced, sized } from './readers';

/*
 * Numbers in every form in which people write them, and where the answer turns as they grow. A digest stands for what
 * would fill pages. Where it changes on purpose, `npm test -- unit/text/kept --update` writes it anew.
 */

const keep = (lines: readonly string[], name: string) =>
  expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`./kept/forms-${name}.txt`);

const numbers =
  `0 1 7 12 99 100 999 1000 1299 1.299 1,299 1.299,00 1,299.00 1'299.50 1’299.– 1|299 1|299,00 12.5 12,5 12.50 12,345 12.3456 0.5 .5 ,5 0,299
  1.2.3 1,23,456 1.234.567 1,234,567.89 1.234.567,89 1|234|567 12|50 28|850 2||850 1,|250.00 119.|95 12.50|100 50,- 1299.– 100k 1,2k 12万 1.5万 1万5千 00.10 007
  1234567890123456 99999999999999 -5 +5 1/2 1:30 5% 5x 1-2 1.2,3.4 10.000.00 1,000,00 ½`
    .split(/\s+/)
    .map((form) => form.replaceAll('|', ' '));
const signs = '€ $ £ ¥ 円 EUR USD US$ CHF kr R$ A$ NZ$ zł Kč ₹ Fr. SGD$ euros pounds MXN'.split(' ');
/** One of each kind: a sign of one country and of several, a code, a word, with a point, of no decimals. */
const someSigns = '€ $ CHF kr Fr. 円 pounds'.split(' ');
const hints: text.PriceHints[] = [
  {},
  { language: 'en-GB' },
  { language: 'de' },
  { language: 'fr-CH' },
  { domain: 'shop.ca', currency: 'CAD' },
  { language: 'ja', currency: 'JPY' },
  { language: 'xx', domain: 'shop.zz', currency: 'KWD' },
];

it('sums in every form, with every sign, on pages of many places', async () => {
  const out = numbers.flatMap((number) => {
    const forms = someSigns.flatMap((sign) => [
      `${sign}${number}`,
      `${sign} ${number}`,
      `${number}${sign}`,
      `${number} ${sign}`,
    ]);
    const read = (form: string, hint: text.PriceHints) => [
      ...text.parsePrices(`Bag, ${form}, as new`, hint).map(priced),
      JSON.stringify(text.parsePriceText(form, null, hint)),
    ];
    return [
      `${number}: count ${readCount(number)}`,
      ...['€ 1', '1 $', '1'].map((like) => {
        const form = like.replace('1', number);
        return `  ${form}: ${text.parsePrices(`Price ${form}`, {}).map(priced).join('; ')} | ${JSON.stringify(text.parsePriceText(form))}`;
      }),
      `  ${hints.map((hint) => digestOf(forms.map((form) => read(form, hint)))).join(' ')}`,
    ];
  });
  await keep(out, 'sums');
});

it('what a sign means, on pages of many places', async () => {
  const out = signs.map(
    (sign) =>
      `${sign}: ${hints.map((hint) => text.parsePrices(`${sign} 100`, hint).map(priced).join() || 'nothing').join('; ')}`,
  );
  await keep(out, 'signs');
});

const sizes = (said: string, language = 'en') => text.parseMeasures(said, language).map(sized).join('; ') || 'nothing';

it('lengths in every form', async () => {
  const forms = [
    '1 cm',
    '1 mm',
    '1"',
    '1 in',
    '1 inches',
    '1 m',
    '1 ft',
    'W 1 cm',
    '1 x 1 x 1',
    '1 x 1 x 1 cm',
    'W1 H1',
    'width 1',
    '1 cm wide',
    'about 1 cm',
    '1-2 cm',
    '1 by 1 cm',
    'cm 1 x 1',
    'L1 B1 H1 cm',
    '1" (1 cm) wide',
    '1 m 20',
    'size 1',
    'strap 1 cm',
    '1W x 1H x 1D',
    '1W 1H 1D in',
    'H x W 1 x 1 cm',
  ];
  const values = [
    '0',
    '0.5',
    '1',
    '5',
    '9.75',
    '12',
    '19',
    '20',
    '21',
    '30',
    '30,5',
    '½',
    '5½',
    '¼',
    '¾',
    '⅓',
    '⅔',
    '⅛',
    '⅜',
    '⅝',
    '⅞',
    '⅕',
    '3⅓',
    '1/2',
    '3 1/4',
    '197',
    '500',
    '501',
    '5000',
    '5001',
  ];
  const out = forms.flatMap((form) => [
    `${form}: ${sizes(form.replaceAll('1', '30'))}`,
    ...values.map(
      (value) =>
        `  ${value} ${['en', 'de', 'en-gb', 'en-us', 'fr', ''].map((language) => digestOf(sizes(form.replace('1', value).replaceAll(/(?<![\d/])1(?![\d/])/g, '22'), language))).join(' ')}`,
    ),
  ]);
  await keep(out, 'lengths');
});

it('where a length, a range and a second width turn', async () => {
  const sweeps: Record<string, (value: number) => string> = {
    'largest in mm': (value) => `${text.parseMeasures(`width ${4900 + value} mm`).length}`,
    'largest in cm': (value) => `${text.parseMeasures(`width ${400 + value} cm`).length}`,
    'the upper end': (value) => String(text.parseMeasures(`width 40-${value} cm`)[0]?.measure.precisionMm !== 5),
    'two widths': (value) =>
      text
        .parseMeasures(`width 100 cm, width ${value} cm`)
        .map(({ measure }) => measure.dimension)
        .join(),
    'bare numbers without a unit': (value) => String(text.parseMeasures(`W${value} H8`, 'en').length),
    'terms of one run': (value) => text.parseMeasures(`${'1 x '.repeat(value)}1 cm`).length.toString(),
  };
  await keep(
    Object.entries(sweeps).flatMap(([name, answer]) => [
      name,
      ...(name === 'terms of one run' ? turnsOf(40, answer, 18) : turnsOf(130, answer)).map((turn) => `  ${turn}`),
    ]),
    'turns',
  );
});

it('ratings on every scale, and counts', async () => {
  const forms = [
    '1 out of 5',
    '1/5',
    '4 out of 1',
    '1%',
    '1% positive',
    '1 stars',
    '★ 1',
    'rating: 1',
    'rating: 1%',
    '4.5 (1)',
    '4.5 out of 5 (1 ratings)',
    '1 ratings, 4 of 5',
    '5つ星のうち1',
    'average 1',
  ];
  const values = '0 0.5 1 3 4 4.9 5 5.0 5.1 6 7 9 10 10.5 11 20 21 50 99 100 100.5 101 1,204 1.5k'.split(' ');
  const rated = (said: string) => JSON.stringify(text.findRatings(said).map(({ value }) => value));
  const counts = [
    '1 sold',
    '1 sales',
    'sales: 1',
    '1 watchers',
    'watchers: 1',
    '1 bids',
    'bids: 1',
    'returns within 1 days',
    'returns 1 weeks',
    'member for 1 years',
  ];
  const counted = (said: string) =>
    JSON.stringify(
      [
        text.findSalesCounts(said),
        text.findWatchers(said),
        text.findBids(said),
        text.findReturns(said),
        text.findMemberSince(said, { language: 'en', now }),
      ].map((found) => found.map(({ value }) => value)),
    );
  const amounts =
    '0 1 9 12 99 100 123 365 999 1000 1,204 1.204 12 345 1.2k 1,2 k 12万 1.2345 123456789 1234567890'.split(' ');
  await keep(
    [
      ...forms.flatMap((form) => [form, ...values.map((value) => `  ${value} ${rated(form.replace('1', value))}`)]),
      ...counts.flatMap((form) => [form, ...amounts.map((value) => `  ${value} ${counted(form.replace('1', value))}`)]),
    ],
    'ratings',
  );
});
