import { describe, expect, it } from 'vitest';
import { type Draft, emptyDraft } from '../../../src/listing/draft';
import { readStateFacts } from '../../../src/listing/state-facts';
import type { Candidate } from '../../../src/listing/types';
import { hints } from './page';

const shown = <T>(value: T, confidence = 0.7): Candidate<T> => ({ value, origin: 'visible', where: 'p', confidence });
const told = ({ value, origin, where, confidence, words, caveats }: Candidate<unknown>): string =>
  [
    typeof value === 'object' ? JSON.stringify(value) : value,
    origin,
    where,
    confidence,
    ...(words === undefined ? [] : [`from ${words}`]),
    ...(caveats ?? []),
  ].join(' | ');

/** What a page's own state adds to a draft: all that it holds afterwards. */
function read(state: { things?: Record<string, string>[]; texts?: string[] }, before: Partial<Draft> = {}, text = '') {
  const draft = { ...emptyDraft(), ...structuredClone(before) };
  readStateFacts({ things: [], texts: [], ...state }, draft, { ...hints, now: '2026-03-01' }, text);
  const { seller, problems: _, title: __, ...fields } = draft;
  const all = Object.entries({ ...fields, ...seller } as unknown as Record<string, Candidate<unknown>[]>);
  return Object.fromEntries(
    all.filter(([, found]) => found.length > 0).map(([name, found]) => [name, found.map(told)]),
  );
}

describe('a description that the page shows in part', () => {
  const described = (start: string, texts: string[], confidence = 0.7) =>
    read({ texts }, { description: [shown(start, confidence)] }).description;
  const nineteen = 'Nineteen characters';
  const whole = `${nineteen}. And the rest.`;
  const from = 'json-ld | inline state > text';

  it.each<[string, string, string[], string[]]>([
    ['of twenty characters', `${nineteen}.…`, [whole], [`${whole} | ${from} | 0.75`]],
    ['of nineteen', `${nineteen}…`, [whole], []],
    ['that ends in words to read on', `${nineteen}. Read more`, [whole], [`${whole} | ${from} | 0.75`]],
    ['that ends in both', `  ${nineteen}.... show more  `, [whole], [`${whole} | ${from} | 0.75`]],
    ['that is the whole', `${nineteen}. And the rest.`, [whole], []],
    ['that no text goes on from', `${nineteen}. But not so…`, [whole], ['cut']],
    ['without a sign of it', `${nineteen}.`, [whole], [`${whole} | ${from} | 0.75`]],
    ['that no text goes on from, without a sign of it', `${nineteen}. But not so`, [whole], []],
    [
      'of which the longest text goes on',
      `${nineteen}.…`,
      [`${nineteen}. Short`, whole, `${nineteen}. Less`],
      [`${whole} | ${from} | 0.75`],
    ],
    [
      'over other blanks',
      'Nineteen   characters.…',
      [`${nineteen}.\n\nAnd more.`],
      [`${nineteen}.\n\nAnd more. | ${from} | 0.75`],
    ],
    ['in tags', `${nineteen}.…`, [`<p>${nineteen}.</p><p>More.</p>`], [`${nineteen}.\n\nMore. | ${from} | 0.75`]],
  ])('%s', (_, start, texts, added) => {
    const own = `${start} | visible | p | 0.7`;
    expect(described(start, texts)).toEqual(added[0] === 'cut' ? [`${own} | cut`] : [own, ...added]);
  });

  it('is as sure as what is shown, and a little more', () => {
    expect(described(`${nineteen}.…`, [whole], 0.95)?.[1]).toBe(`${whole} | ${from} | 0.97`);
    const caveats = ['cut'];
    expect(read({ texts: [] }, { description: [{ ...shown(`${nineteen}.…`), caveats }] }).description?.[0]).toBe(
      `${nineteen}.… | visible | p | 0.7 | cut`,
    );
  });

  it('is the first of several that a text completes', () => {
    const description = [shown('short…'), shown(`${nineteen}.…`), shown('And other words of it…')];
    expect(read({ texts: [whole, 'And other words of it are longer'] }, { description }).description?.slice(3)).toEqual(
      [`${whole} | ${from} | 0.75`],
    );
  });

  it('is looked for in the page where nothing was taken for one', () => {
    const found = (text: string, texts = [whole]) => read({ texts }, {}, text).description ?? 'none';
    const told = [`${whole} | ${from} | 0.6`];
    expect(found(`Tote\n  ${nineteen}.…  \nmore`)).toEqual(told);
    expect(found(`${nineteen}.`)).toBe('none');
    expect(found(`${nineteen}…`)).toBe('none');
    expect(found(`${whole}…`)).toBe('none');
    expect(found(`${nineteen}.…`, ['other', whole, `${whole} Longer.`])).toEqual(told);
    const far = (before: number) => found(`${'x'.repeat(before)}\n${nineteen}.…`);
    expect([far(29_978), far(29_979)]).toEqual([told, 'none']);
    expect(read({ texts: [whole] }, { description: [shown('Other words, long enough.')] }, `${nineteen}.…`)).toEqual({
      description: ['Other words, long enough. | visible | p | 0.7'],
    });
  });
});

describe('a thing of the state', () => {
  const title = [shown('Ondrasse Palma Tote in tan')];
  const price = (minor: number, kind: 'sale' | 'was' = 'sale') =>
    shown({ kind, minor, exponent: 2, currency: 'EUR', currencies: ['EUR'] });
  const brand = (things: Record<string, string>[], before: Partial<Draft> = { title }) =>
    read({ things }, before).maker;
  const of = (value: string) => [`${value} | json-ld | inline state > brand | 0.72`];
  const named = { title: 'Ondrasse Palma Tote in tan', brand: 'A' };

  it.each<[string, Record<string, string>[], Partial<Draft>, string[] | undefined]>([
    ['of its title', [named], { title }, of('A')],
    ['of four words of five', [{ ...named, title: 'Ondrasse Palma Tote in red' }], { title }, of('A')],
    ['of three words of five', [{ ...named, title: 'Ondrasse Palma Tote of red' }], { title }, undefined],
    [
      'of three words of five at the price shown',
      [{ ...named, title: 'Ondrasse Palma Tote of red', price: '5' }],
      { title, price: [price(500)] },
      of('A'),
    ],
    [
      'of two words of five at the price shown',
      [{ ...named, title: 'Ondrasse Palma bag of red', price: '5' }],
      { title, price: [price(500)] },
      undefined,
    ],
    ['of its title at another price', [{ ...named, price: '6' }], { title, price: [price(500)] }, undefined],
    ['of its title, the price in coins', [{ ...named, price: '500' }], { title, price: [price(500)] }, of('A')],
    ['of its title without a price', [named], { title, price: [price(500)] }, undefined],
    ['beside a former price', [named], { title, price: [price(900, 'was')] }, of('A')],
    ['without a title', [{ brand: 'A' }], { title }, undefined],
    ['on a page without one', [named], {}, undefined],
    [
      'that fits better',
      [
        { ...named, title: 'Ondrasse Palma Tote in red' },
        { ...named, brand: 'B' },
      ],
      { title },
      of('B'),
    ],
    [
      'that tells more, of those that fit as well',
      [named, { ...named, brand: 'B', x: 'y' }, { ...named, brand: 'C' }],
      { title },
      of('B'),
    ],
    ['that comes first, of those alike', [named, { ...named, brand: 'B' }], { title }, of('A')],
  ])('%s', (_, things, before, wanted) => {
    expect(brand(things, before)).toEqual(wanted);
  });

  it('tells its price where none is shown', () => {
    const of = (thing: Record<string, string>, prices: Draft['price'] = []) =>
      read({ things: [{ title: 'Ondrasse Palma Tote in tan', ...thing }] }, { title, price: prices }).price;
    const five = (origin: string) =>
      `{"kind":"sale","minor":500,"exponent":2,"currency":"EUR","currencies":["EUR"]} | ${origin}`;
    expect(of({ price: '5.00', currency: 'EUR' })).toEqual([
      `${five('json-ld | inline state > price | 0.7 | from 5.00')}`,
    ]);
    expect(of({ price: '5.00' })?.[0]).toMatch(/ 0\.63 \| from 5\.00 \| currency-open$/);
    expect(of({ price: '5.00', currency: 'EUR' }, [price(500)])).toEqual([five('visible | p | 0.7')]);
    expect(of({ price: '5.00', currency: 'EUR' }, [price(900, 'was')])).toHaveLength(2);
    expect(of({ price: 'ask', currency: 'EUR' })).toBeUndefined();
  });

  it('tells its fields under each of their names, and no words of a program', () => {
    const all = (thing: Record<string, string>) => {
      const { description: _, ...found } = read(
        { things: [{ title: 'Ondrasse Palma Tote in tan', ...thing }] },
        { title },
      );
      return Object.values(found).flatMap((one) => one.map((line) => line.split(' | ').slice(0, 3).join(' ')));
    };
    const names = (...keys: string[]) => keys.map((key) => all({ [key]: 'Value' }).join());
    const at = (path: string, count: number) => Array(count).fill(`Value json-ld inline state > ${path}`);
    expect(
      names(
        'brand',
        'Designer',
        'maker_name',
        'manufacturer',
        'marke',
        'marque',
        'marca',
        'merk',
        'brandTitle',
        'brandInfo.name',
        'maker.title',
      ),
    ).toEqual(at('brand', 11));
    expect(names('color', 'colour', 'colorName', 'color.name', 'colour.title')).toEqual(at('colour', 5));
    expect(names('material', 'material_name', 'material.title')).toEqual(at('material', 3));
    expect(names('model', 'modelName', 'model.name')).toEqual(at('model', 3));
    expect(names('seller_name', 'userlogin', 'shop.title', 'owner.display_name', 'vendor.username')).toEqual(
      at('seller', 5),
    );
    expect(names('location', 'city', 'place_name', 'location.city', 'user.city_name', 'address.name')).toEqual(
      at('place', 6),
    );
    expect(names('brands', 'x.brand', 'color_code', 'sellers', 'location.street')).toEqual(Array(5).fill(''));
    expect(['', ' ', '7', 'true', 'NULL', 'https://x.example', 'false'].map((value) => all({ brand: value }))).toEqual(
      Array(7).fill([]),
    );
    expect(all({ brand: '', designer: 'Value' })).toEqual(at('brand', 1));
    expect(all({ brand: `<b>${'v'.repeat(121)}</b>` })).toEqual([`${'v'.repeat(120)} json-ld inline state > brand`]);
  });
});
