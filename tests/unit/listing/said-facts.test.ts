import { describe, expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import type { Candidate } from '../../../src/listing/types';
import { readSaidFacts } from '../../../src/listing/visible/said-facts';

const hints = { language: 'en', domain: 'attic-arcade.example', now: '2026-03-01T12:00:00Z' };
const read = (text: string, before: Partial<Draft> = {}): Draft => {
  const draft = { ...emptyDraft(), ...before };
  readSaidFacts(text, draft, hints);
  return draft;
};
const one = (value: string): Candidate<string> => ({ value, origin: 'visible', where: 'h1', confidence: 0.8 });
const told = (field: Candidate<unknown>[]) =>
  field.map(({ value, where, confidence }) => `${JSON.stringify(value)} ${where} ${confidence}`);
const seller = { ...emptyDraft().seller, name: [one('moth')] };

describe('a condition that the page says', () => {
  it.each<[string, string, Partial<Draft>, string[]]>([
    ['in its title', '', { title: [one('Carryall, new with tags')] }, ['"new" title 0.5']],
    ['in its description', '', { description: [one('It is used.')] }, ['"used" description 0.45']],
    ['on a line of its text', 'It is used.', {}, ['"used" text 0.4']],
    ['on a line of eighty', 'It is used'.padEnd(80, ' so'), {}, ['"used" text 0.4']],
    ['on a longer line', 'It is used'.padEnd(81, ' so'), {}, []],
    ['under a label', 'Condition\nUsed', {}, ['"used" text 0.5']],
  ])('%s', (_, text, before, wanted) => {
    expect(told(read(text, before).condition)).toEqual(wanted);
  });
});

describe('whether the piece can be bought', () => {
  const state = (text: string) => told(read(text).availability);
  it.each([
    ['on a line of its own', 'Sold', ['"sold" text 0.92']],
    ['with a mark or a point', '* Sold! —', ['"sold" text 0.92']],
    ['as what is there', 'In stock', ['"offered" text 0.8']],
    ['as what is kept for somebody', 'Reserved', ['"reserved" text 0.8']],
    ['inside a sentence', 'I have sold many bags like this one before', ['"sold" text 0.4']],
    ['of one of its colours', 'Sold out in tan', []],
    ['on a line of a hundred and twenty', `Sold ${'x'.repeat(115)}`, ['"sold" text 0.4']],
    ['on a longer line', `Sold ${'x'.repeat(116)}`, []],
    ['beside a sum in a row of a table', 'moth\t£54\tSold', []],
    ['three lines below such a row', 'moth\t£54\na\nb\nSold', []],
    ['four lines below it', 'moth\t£54\na\nb\nc\nSold', ['"sold" text 0.92']],
    ['below a row without a sum', 'moth\tred\nSold', ['"sold" text 0.92']],
    ['below a line with a sum', 'moth £54\nSold', ['"sold" text 0.92']],
    ['below a row of four hundred', `${'x'.repeat(396)}\t£54\nSold`, []],
    ['below a row of more', `${'x'.repeat(397)}\t£54\nSold`, ['"sold" text 0.92']],
  ])('%s', (_, text, wanted) => {
    expect(state(text)).toEqual(wanted);
  });
});

describe('a label above its value', () => {
  it.each<[string, string, string[]]>([
    ['names it', 'Brand\nOndrasse', ['"Ondrasse" text 0.5']],
    ['names none that is itself a label', 'Brand\nModel', []],
    ['names none that has a label of its own', 'Brand\nColour: tan', []],
    ['names one of sixty', `Brand\n${'O'.repeat(60)}`, [`"${'O'.repeat(60)}" text 0.5`]],
    ['names none that is longer', `Brand\n${'O'.repeat(61)}`, []],
    ['stands above empty lines too', 'Brand\n\n\nOndrasse', ['"Ondrasse" text 0.5']],
    ['stands at the end', 'Brand', []],
  ])('%s', (_, text, wanted) => {
    expect(told(read(text).maker)).toEqual(wanted);
  });

  it('names a seller by a name of its own', () => {
    expect(told(read('Seller\nName: moth').seller.name)).toEqual(['"moth" text 0.55']);
    expect(told(read('Seller\nAge: 40').seller.name)).toEqual([]);
    expect(told(read('Brand\nName: moth').seller.name)).toEqual([]);
  });

  it('names no seller by the stars that stand there', () => {
    const { name, rating } = read('Seller\n4.9 out of 5 (31)\nmoth').seller;
    expect([name.length, rating.map(({ value }) => value.share)]).toEqual([0, [0.98]]);
  });

  it('may stand before its value without a colon', () => {
    expect(told(read('Ships from Ghent').seller.place)).toEqual(['"Ghent" text 0.55']);
    expect(read('Posted on 3 February 2026').posted[0]).toMatchObject({
      value: { from: '2026-02-03' },
      confidence: 0.55,
    });
  });
});

describe('terms and standing of a seller', () => {
  it('are surer near the seller’s name or a heading for it, within six lines', () => {
    const rating = (text: string, before: Partial<Draft> = {}) =>
      Math.max(...read(text, before).seller.rating.map(({ confidence }) => confidence));
    const stars = '4.9 out of 5 (31)';
    expect(rating(stars)).toBe(0.45);
    expect(rating(`Seller\n${stars}`)).toBe(0.6);
    expect(rating(`Seller\n${'x\n'.repeat(5)}${stars}`)).toBe(0.6);
    expect(rating(`Seller\n${'x\n'.repeat(6)}${stars}`)).toBe(0.45);
    expect(rating(`by moth\n${stars}`, { seller: structuredClone(seller) })).toBe(0.6);
    expect(rating(`by mo\n${stars}`, { seller: { ...structuredClone(seller), name: [one('mo')] } })).toBe(0.45);
  });

  it('are a rating with its count anywhere, one without only near the seller', () => {
    const rating = (text: string) => read(text).seller.rating.map(({ value: { share, count } }) => `${share} ${count}`);
    expect(rating('4.9 out of 5 (31)')).toEqual(['0.98 31']);
    expect(rating('4.9 out of 5')).toEqual([]);
    expect(rating('Seller\n4.9 out of 5')).toEqual(['0.98 null']);
  });

  it('are read behind the name that opens a line', () => {
    const draft = read('moth4.9 out of 5 (31)', { seller: structuredClone(seller) });
    expect(draft.seller.rating.map(({ value }) => value.share)).toEqual([0.98]);
  });

  it('are each told with its words and its trust', () => {
    const draft = read(
      [
        '12 watchers',
        '3 bids',
        '14 day returns',
        'Free shipping',
        'Pay with invoice',
        '1,204 sales',
        'Member since 2011',
      ].join('\n'),
    );
    expect(told(draft.watchers)).toEqual(['12 text 0.6']);
    expect(told(draft.bids)).toEqual(['3 text 0.6']);
    expect(draft.returns).toMatchObject([{ value: { accepted: true, days: 14 }, confidence: 0.6 }]);
    expect(told(draft.shipping)).toEqual(['"Free shipping" text 0.55']);
    expect(told(draft.seller.salesCount)).toEqual(['1204 text 0.45']);
    expect(draft.seller.memberSince).toMatchObject([{ value: { from: '2011-01-01' }, confidence: 0.55 }]);
  });

  it('are not read in a line of more than six hundred characters', () => {
    const line = (length: number) => read(`12 watchers ${'x'.repeat(length - 12)}`).watchers.length;
    expect([600, 601].map(line)).toEqual([1, 0]);
  });

  it('are a place on a line of its own', () => {
    expect(told(read('50667 Köln').seller.place)).toEqual(['"Köln" text 0.45']);
  });

  it('are read in thirty thousand characters of the page', () => {
    const at = (length: number) => read(`${'x\n'.repeat(length / 2)}Sold`).availability.length;
    expect([29_996, 29_998].map(at)).toEqual([1, 0]);
  });
});

it('a number of the piece stands in its title or description', () => {
  expect(told(read('', { description: [one('Item number: AB-1234')] }).itemCode)).toEqual([
    '"AB-1234" description 0.55',
  ]);
});
