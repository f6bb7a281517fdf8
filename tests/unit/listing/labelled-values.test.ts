import { describe, expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import type { Candidate } from '../../../src/listing/types';
import { readLabelled, sellerName } from '../../../src/listing/visible/labelled';
import { readConditionWords, readDate, readRatingWords } from '../../../src/listing/visible/words';

const from = { origin: 'visible', where: 'row', confidence: 0.8 } as const;
const told = ({ value, words, confidence, caveats }: Candidate<unknown>): string =>
  [JSON.stringify(value), confidence, ...(words === undefined ? [] : [`from ${words}`]), ...(caveats ?? [])].join(' ');

/** All fields that a label and its value fill. */
function read(label: string, value: string, language: string | null = 'en', caveats: string[] = []) {
  const draft = emptyDraft();
  const hints = { language, domain: 'attic-arcade.example', now: '2026-03-01' };
  readLabelled(label, value, draft, { ...from, ...(caveats.length > 0 ? { caveats } : {}) }, hints);
  const { seller, problems: _, ...fields } = draft;
  const all = Object.entries({ ...fields, ...seller } as unknown as Record<string, Draft['title']>);
  return Object.fromEntries(
    all.filter(([, found]) => found.length > 0).map(([name, found]) => [name, found.map(told)]),
  );
}

/** Says something to every reader of values: a label takes its own. */
const everything = 'used, 30 cm wide, 4.9 out of 5 (31), 3 March 2025, returns within 14 days, €5.00';

describe('a model in a row', () => {
  it.each<[string, boolean]>([
    ['Orla', true],
    ['m'.repeat(60), true],
    ['m'.repeat(61), false],
    ['1980s look, holds a phone and keys.', false],
    ['Is it an Orla?', false],
    ['オルラです。', false],
  ])('“%s” is a name: %s', (value, isName) => {
    expect(read('Model', value)).toEqual(isName ? { model: [`"${value}" 0.8`] } : {});
  });
});

describe('sizes whose label says the sides or the unit', () => {
  it.each<[string, string, string[]]>([
    ['Dimensions (L x H x D)', '31 x 22 x 12 cm', ['width 310', 'height 220', 'depth 120']],
    ['Abmessungen H/B/T', '22/31/12 cm', ['height 220', 'width 310', 'depth 120']],
    ['Medidas en cm', '31 x 22 x 12', ['unknown 310', 'unknown 220', 'unknown 120']],
    ['Afmetingen (cm)', '31 x 22', ['unknown 310', 'unknown 220']],
    ['Shelf (L x H)', '31 x 22 cm', []],
    ['Price in cm', '31 x 22 cm', []],
  ])('%s: %s', (label, value, wanted) => {
    const { measures = [], ...others } = read(label, value, null);
    const told = measures.map((said) => JSON.parse(said.slice(0, said.lastIndexOf('}') + 1)));
    expect(told.map(({ dimension, mm }) => `${dimension} ${mm}`)).toEqual(wanted);
    expect(others).toEqual({});
  });
});

describe('a label takes its own value', () => {
  it.each<[string, Record<string, string[]>]>([
    ['Brand', { maker: [`"${everything}" 0.8`] }],
    ['Item number', { itemCode: [`"${everything}" 0.8`] }],
    ['Material', { material: [`"${everything}" 0.8`] }],
    ['Colour', { colour: [`"${everything}" 0.8`] }],
    ['Serial number', { itemCode: [`"${everything.slice(0, 60)}" 0.76`] }],
    ['Condition', { condition: [`"used" 0.8 from ${everything}`] }],
    [
      'Measurements',
      {
        measures: [
          '{"dimension":"width","mm":300,"precisionMm":5,"unit":"cm","words":"30 cm"} 0.8',
          '{"dimension":"unknown","mm":49,"precisionMm":0.5,"unit":"cm","words":"4.9"} 0.8',
        ],
      },
    ],
    ['Seller', { name: ['"used" 0.8'], rating: ['{"share":0.98,"count":31,"words":"4.9 out of 5"} 0.8'] }],
    ['Location', { place: [`"${everything}" 0.8`] }],
    ['Posted', { posted: [`{"from":"2025-03-03","to":"2025-03-03","precision":"day"} 0.8 from ${everything}`] }],
    [
      'Member since',
      { memberSince: [`{"from":"2025-03-03","to":"2025-03-03","precision":"day"} 0.8 from ${everything}`] },
    ],
    ['Shipping', { shipping: [`"${everything}" 0.8`] }],
    ['Payment', { payment: [`"${everything}" 0.8`] }],
    ['Returns', { returns: ['{"accepted":true,"days":14,"words":"returns within"} 0.8'] }],
    ['Watchers', { watchers: [`30 0.8 from ${everything}`] }],
    ['Bids', { bids: [`30 0.8 from ${everything}`] }],
    ['Rating', { rating: ['{"share":0.98,"count":31,"words":"4.9 out of 5"} 0.8'] }],
    ['Sales', { salesCount: [`30 0.8 from ${everything}`] }],
    [
      'Price',
      { price: ['{"kind":"sale","minor":500,"exponent":2,"currency":"EUR","currencies":["EUR"]} 0.8 from €5.00'] },
    ],
    ['Cookies', {}],
  ])('%s', (label, wanted) => {
    expect(read(label, everything)).toEqual(wanted);
  });

  it.each<[string, string, Record<string, string[]>]>([
    ['Brand', '', {}],
    ['Price', '  ', {}],
    ['Brand', `  ${'b '.repeat(60)} `, { maker: [`"${'b '.repeat(60).trim()}" 0.8`] }],
    ['Brand', 'b'.repeat(121), {}],
    ['Material', `${'m'.repeat(119)}\n\t m`, {}],
    ['Serial number', 's'.repeat(61), { itemCode: [`"${'s'.repeat(60)}" 0.76`] }],
    ['Location', 'l'.repeat(101), { place: [`"${'l'.repeat(100)}" 0.8`] }],
    ['Shipping', 'x'.repeat(401), { shipping: [`"${'x'.repeat(400)}" 0.8`] }],
    ['Seller', 's'.repeat(60), { name: [`"${'s'.repeat(60)}" 0.8`] }],
    ['Seller', 's'.repeat(61), {}],
    ['Seller', 'harbour_attic Private seller', { name: ['"harbour_attic" 0.8'], trader: ['"private" 0.8'] }],
    ['Returns', '14 days', { returns: ['{"accepted":true,"days":14,"words":"Returns: 14 days"} 0.8'] }],
    ['Bids', 'none', {}],
    ['Brand', 'Material', {}],
    ['Seller', 'Location:', {}],
    ['Bids', '12 bids', { bids: ['12 0.8 from 12 bids'] }],
    ['Watchers', '1.2k people', { watchers: ['1200 0.8 from 1.2k people'] }],
    ['Sales', 'about 12 345 pieces', { salesCount: ['12345 0.8 from about 12 345 pieces'] }],
    [
      'Price',
      '€1.00, €2.00, €3.00, €4.00',
      {
        price: [1, 2, 3].map(
          (euro) =>
            `{"kind":"sale","minor":${euro}00,"exponent":2,"currency":"EUR","currencies":["EUR"]} 0.8 from €${euro}.00`,
        ),
      },
    ],
  ])('%s: %s', (label, value, wanted) => {
    expect(read(label, value)).toEqual(wanted);
  });

  it('with what makes it weaker', () => {
    const day = '{"from":"2025-04-03","to":"2025-04-03","precision":"day"}';
    expect(read('Posted', '03/04/2025', 'en-GB').posted).toEqual([`${day} 0.8 from 03/04/2025`]);
    expect(read('Posted', '03/04/2025', null, ['hidden']).posted?.[0]).toMatch(
      / 0\.48 from 03\/04\/2025 hidden ambiguous$/,
    );
    expect(read('Price', '€1.299', 'en', ['hidden']).price?.[0]).toMatch(/ 0\.48 from €1\.299 hidden ambiguous$/);
  });
});

it.each([
  ['moth_and_lamp', 'moth_and_lamp'],
  ['  Name: anna_b  ', 'Name: anna_b'],
  ['Name :  anna_b  ', 'anna_b'],
  ['anna_b\n4.9', 'anna_b'],
  ['anna_b | shop', 'anna_b'],
  ['★ anna_b', ''],
  ['anna_b ★ 4.9', 'anna_b'],
  ['anna_b, 12 sales', 'anna_b'],
  ['anna_b - trusted', 'anna_b'],
  ['anna-b', 'anna-b'],
  ['anna_b 99.1% good', 'anna_b'],
  ['anna_b 318 sales', 'anna_b'],
  ['anna_b Private seller', 'anna_b'],
  ['anna_b. Sends quickly', 'anna_b'],
  ['J. Smith', 'J. Smith'],
  ['anna_b.', 'anna_b'],
  ['anna_b;', 'anna_b'],
  ['', ''],
])('the seller of “%s” is “%s”', (text, name) => {
  expect(sellerName(text)).toBe(name);
});

describe('words beside a label', () => {
  it.each([
    ['used', 'used'],
    ['used, very good', 'used-very-good'],
    ['very good', 'used-very-good'],
    ['good', 'used'],
    ['good bag', null],
    ['new', 'new'],
    ['new, damaged', 'new'],
    ['used, damaged', 'damaged'],
    ['used, new, damaged', 'damaged'],
    ['used, as new, damaged', 'as-new'],
    ['used, new', 'used'],
    ['used, used', 'used'],
    ['new, very good', 'new'],
    ['', null],
  ])('the condition of “%s” is %s', (text, condition) => {
    expect(readConditionWords(text)).toBe(condition);
  });

  it('a date of one meaning, of two, and of none', () => {
    const dated = (text: string, language: string | null) => readDate(text, { language, now: '2026-03-01' });
    expect(dated('3 March 2025', 'en')).toEqual({
      span: { from: '2025-03-03', to: '2025-03-03', precision: 'day' },
      ambiguous: false,
    });
    expect(dated('03/04/2025', null)?.ambiguous).toBe(true);
    expect(dated('soon', 'en')).toBeNull();
  });

  it('a rating as far as four hundred characters', () => {
    const rating = { share: 0.98, count: 31, words: '4.9 out of 5' };
    expect(readRatingWords(`${' '.repeat(383)}4.9 out of 5 (31)`)).toEqual(rating);
    expect(readRatingWords(`${' '.repeat(384)}4.9 out of 5 (31)`)).toEqual({ ...rating, count: null });
    expect(readRatingWords('4.333 out of 5 (3)')?.share).toBe(0.8666);
  });
});
