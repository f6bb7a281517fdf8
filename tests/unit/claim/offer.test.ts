import { describe, expect, it, test } from 'vitest';
import { findClaims, offerOf } from '../../../src/claim';
import { codesByLayout } from '../../../src/claim/code-by-layout';
import { isOfOffer } from '../../../src/claim/offer';
import type { Claim } from '../../../src/claim/types';
import { ondrasse as withSystems } from '../check/sample';
import { listingOf, ondrasse } from './listing-of';

const offered = (title: string, description = 'A thing of leather.', language = 'en') => {
  const listing = listingOf(title, description, language);
  const { kind, part } = offerOf(listing, findClaims(listing, [ondrasse]));
  return part ? `${kind} ${part}` : kind;
};

describe('what a listing offers', () => {
  it.each([
    ['Ondrasse Carryall 30', 'piece'],
    ['Ondrasse purse', 'piece'],
    ['Ondrasse pouch', 'piece'],
    ['Ondrasse key holder', 'accessory'],
    ['Ondrasse belt', 'accessory'],
    ['Ondrasse wallet', 'accessory'],
    ['Ondrasse bag with key holder', 'piece'],
    ['Ondrasse tote and belt', 'piece'],
    ['Shoulder strap only, Ondrasse', 'part strap'],
    ['Only the strap of an Ondrasse bag', 'part strap'],
    ['Strap for a Carryall 30', 'part strap'],
    ['Ondrasse bag, strap only worn once', 'piece'],
    ['Only for lovers of old leather: a strap', 'piece'],
    ['Just the right strap', 'piece'],
    ['2 straps only', 'piece'],
    ['Zip only', 'part zip'],
    ['Pocket only', 'piece'],
    ['Carryall 30 strap only', 'piece'],
    ['Ondrasse Carryall 30 with strap', 'piece'],
  ])('%s: %s', (title, kind) => {
    expect(offered(title)).toBe(kind);
  });

  it.each<[string, string]>([
    ['Only a long strap', 'part strap'],
    ['Only an old strap', 'part strap'],
    ['Only the old strap', 'piece'],
  ])('is a part where “only” stands at most eleven characters ahead of it: %s', (title, kind) => {
    expect(offered(title)).toBe(kind);
  });

  it.each([
    ...['purse', 'cartera', 'watch', 'strap', 'riem', 'pouch', 'pouches', 'dust bag', 'dustbag'],
    ...['bag', 'tote', 'satchel', 'Tasche', 'sac', 'borsa', 'bolso', 'tas'],
  ])('may be a bag, or come with one, where a title says “%s”', (word) => {
    expect(offered(`Ondrasse ${word} 1994`)).toBe('piece');
  });

  it('is packaging or a thing made from a piece where the seller says so', () => {
    expect(offered('Ondrasse box', 'Empty box only, no bag included.')).toBe('packaging');
    expect(offered('Ondrasse pouch', 'Upcycled from a vintage Ondrasse bag.')).toBe('remade');
    expect(offered('Ondrasse bag', 'This is not upcycled.')).toBe('piece');
  });
});

it.each([
  ['Strap only', 'Brown leather.', 'en', 'strap'],
  ['Handle only', 'Brown leather.', 'en', 'handle'],
  ['Zip only', 'Brown leather.', 'en', 'zip'],
  ['Lock only', 'Brown leather.', 'en', 'lock'],
  ['Hardware only', 'Brown leather.', 'en', 'hardware'],
  ['Lining only', 'Brown leather.', 'en', 'lining'],
  ['Strap only', 'Material: leather.', 'en', 'strap'],
  ['Pocket only', 'Brown leather.', 'en', 'body'],
  ['Ondrasse bag', 'Brown leather.', 'en', 'body'],
])('what is said of nothing else is of the part that is offered by itself: %s. %s', (title, text, language, part) => {
  const claims = findClaims(listingOf(title, text, language), [ondrasse]);
  expect(claims.flatMap((claim) => (claim.kind === 'material' ? [claim.part] : []))).toEqual([part]);
});

test('what was said of the bag that a part, a box or a remade thing comes from is not of what is offered', () => {
  const claim = (kind: Claim['kind'], rest: object = {}) => ({ kind, at: { field: 'text' }, ...rest }) as never;
  const of = (kind: 'piece' | 'part' | 'packaging' | 'remade' | 'accessory') => ({ kind, part: null }) as never;
  const kinds = ['made', 'model', 'code', 'replaced', 'stored', 'age-word', 'bought', 'material', 'price'] as const;
  const left = (offer: never) => kinds.filter((kind) => isOfOffer(claim(kind), offer));
  expect(left(of('piece'))).toEqual(kinds);
  expect(left(of('accessory'))).toEqual(kinds);
  expect(left(of('part'))).toEqual(kinds.filter((kind) => kind !== 'made' && kind !== 'model'));
  expect(left(of('packaging'))).toEqual(['material', 'price']);
  expect(left(of('remade'))).toEqual(['bought', 'price']);
  for (const offer of [of('packaging'), of('remade')]) {
    expect(isOfOffer(claim('condition', { condition: 'worn' }), offer)).toBe(false);
    for (const condition of ['new', 'unused', 'as-new'])
      expect(isOfOffer(claim('condition', { condition }), offer), condition).toBe(true);
    expect(isOfOffer(claim('condition', { condition: 'worn', at: { field: 'data' } }), offer)).toBe(true);
  }
});

describe('a code that nothing announces', () => {
  const found = (text: string) =>
    codesByLayout(text.toLowerCase(), text, [withSystems]).map(({ start, code, confidence }) => [
      text.slice(start, start + code.length),
      confidence,
    ]);

  it.each([
    ['A bag, KV0915 inside.', 'KV0915', 0.6],
    ['The code is KV0915.', 'KV0915', 0.85],
    ['W 38 KV0915 and more', 'KV0915', 0.6],
    ['W 38 KV 0915', 'KV 0915', 0.6],
    ['K V 0 9 1 5', 'K V 0 9 1 5', 0.6],
    ['KV-0915', 'KV-0915', 0.6],
  ])('%s', (text, code, confidence) => {
    expect(found(text)).toEqual([[code, confidence]]);
  });

  it.each(['KV0915 cm', 'Postcode KV0915', 'KV9915', 'KV091', 'a bag of 1994', 'xKV0915'])('is not %s', (text) => {
    expect(found(text)).toEqual([]);
  });
  const digits = {
    ...withSystems,
    codeSystems: [{ id: 'year-month', used: ['1985', null], layout: [{ year: 4 }, { month: 2 }], examples: [] }],
  } satisfies typeof withSystems;
  const byDigits = (text: string) =>
    codesByLayout(text.toLowerCase(), text, [digits]).map(
      ({ start, code, confidence }) => `${start} ${code} ${confidence}`,
    );
  it.each<[string, string[]]>([
    ['A bag, 199405 inside.', []],
    ['The code: 199405 inside.', ['10 199405 0.85']],
    ['The code is 199413.', []],
    ['The code is 1994-05.', ['12 1994-05 0.85']],
    ['The code is long. It says 199405.', []],
    [`The code ${'x '.repeat(30)}199405`, ['69 199405 0.85']],
    [`The code ${'x '.repeat(40)}199405`, []],
    [`Postcode ${'x '.repeat(10)}, code 199405`, []],
    [`Postcode ${'x '.repeat(20)}, code 199405`, ['56 199405 0.85']],
  ])('of digits alone is one where the sentence speaks of one: %s', (text, codes) => {
    expect(byDigits(text)).toEqual(codes);
  });

  const byPlant = (text: string) => codesByLayout(text.toLowerCase(), text, [ondrasse]).map(({ code }) => code);
  it('is a plant’s letters with three or four digits, where a file knows no system', () => {
    expect(
      ['KV123', 'KV1234', 'KV12', 'KV12345', 'KX123', 'KV12A', '(K)V1234', 'K.V.1234'].map((text) => byPlant(text)[0]),
    ).toEqual(['KV123', 'KV1234', undefined, undefined, undefined, undefined, undefined, 'K.V.1234']);
  });

  it('is none without a maker’s layouts', () => {
    expect(codesByLayout('kv0915', 'KV0915', [])).toEqual([]);
  });
});
