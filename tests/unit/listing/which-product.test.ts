import { describe, expect, it } from 'vitest';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { joinItems } from '../../../src/listing/structured/join';
import { readJsonLd } from '../../../src/listing/structured/json-ld';
import { chooseProduct, describesSame, type PageFacts } from '../../../src/listing/structured/which-product';
import type { Price } from '../../../src/listing/types';
import { documentOf, hints } from './page';

const url = 'https://attic-arcade.example/item/1042';
const seen = (minor: number, exponent = 2): Price => ({
  kind: 'sale',
  minor,
  exponent,
  currency: 'EUR',
  currencies: ['EUR'],
});
const bare: PageFacts = { url, base: url, heading: null, titles: [], seen: [] };
const slices = () => new Slices(usualBudget, undefined, () => 0);

async function itemsOf(...data: object[]) {
  const scripts = data.map((one) => `<script type="application/ld+json">${JSON.stringify(one)}</script>`).join('');
  const { items } = await readJsonLd([documentOf(scripts)], slices());
  joinItems(items);
  return items;
}
const chosen = async (data: object | object[], facts: Partial<PageFacts> = {}) =>
  chooseProduct(await itemsOf(...[data].flat()), { ...bare, ...facts }, hints, slices());
const scoreOf = async (data: object | object[], facts: Partial<PageFacts> = {}) => {
  const { choice } = await chosen(data, facts);
  return choice && Math.round(choice.score * 1000) / 1000;
};
const product = (more: object = {}) => ({ '@type': 'Product', name: 'Ondrasse Palma Tote', ...more });
const offer = { price: 540, priceCurrency: 'EUR' };

describe('how much speaks for a product of the data', () => {
  it.each<[string, object, Partial<PageFacts>, number]>([
    ['nothing', product(), {}, 0],
    ['the page’s address', product({ url: '/item/1042' }), {}, 5],
    ['the page’s address in its offer', product({ offers: { ...offer, url } }), {}, 6],
    ['the page’s path elsewhere', product({ url: 'https://shop.example/item/1042/' }), {}, 3],
    ['another path', product({ url: '/item/7' }), {}, -1],
    ['another path and the page’s', product({ url: ['/item/7', 'https://shop.example/item/1042'] }), {}, 3],
    [
      'the path of a site’s start, which tells nothing',
      product({ url: 'https://shop.example/' }),
      { url: 'https://attic-arcade.example/', base: 'https://attic-arcade.example/' },
      -1,
    ],
    ['an address that is a part of the page', product({ url: '#bag' }), {}, 0],
    ['an id that names nothing', product({ '@id': '_:b0' }), {}, 0],
    ['its id as address', product({ '@id': url }), {}, 5],
    ['its code in the address', product({ sku: '1042' }), {}, 3],
    ['its code behind a colon', product({ mpn: 'mpn:1042' }), {}, 3],
    ['its code of three characters', product({ productID: 'ABC' }), { url: 'https://x.example/abc' }, 3],
    ['a code of two characters', product({ sku: 'ab' }), { url: 'https://x.example/ab' }, 0],
    ['a code that is a part of a longer one', product({ sku: '104' }), {}, 0],
    ['being the page’s main entity', { '@type': 'WebPage', mainEntity: product() }, {}, 3],
    [
      'naming the page that it is the main entity of',
      product({ mainEntityOfPage: { '@type': 'WebPage', '@id': '#p' } }),
      {},
      3,
    ],
    ['its name as the heading', product(), { heading: 'Ondrasse Palma Tote' }, 4],
    [
      'half of its name in the heading',
      product({ name: 'Ondrasse Palma Tote Red' }),
      { heading: 'Ondrasse Palma Bag Blue' },
      2,
    ],
    ['its name as a title', product(), { titles: ['x', 'Ondrasse Palma Tote'] }, 1],
    ['an offer', product({ offers: offer }), {}, 1],
    ['the price seen', product({ offers: offer }), { seen: [seen(54000)] }, 2.5],
    ['a price seen after another', product({ offers: offer }), { seen: [seen(1), seen(54000)] }, 1],
    ['the price seen in another count of decimals', product({ offers: offer }), { seen: [seen(54000, 0)] }, 1],
    ['a description', product({ description: 'x' }), {}, 0.3],
    ['a name under title', { '@type': 'Product', title: 'Ondrasse Palma Tote' }, { heading: 'Ondrasse Palma Tote' }, 4],
    ['no name', { '@type': 'Product' }, { heading: 'Ondrasse Palma Tote' }, 0],
    ['being one of a list', { '@type': 'ItemList', itemListElement: product() }, {}, -3],
    ['being one of a list, some steps down', { '@type': 'ItemList', x: { y: product() } }, {}, -3],
    ['being one of a shop’s', { '@type': 'Organization', x: product() }, {}, -3],
    ['being one of a catalogue', { '@type': 'OfferCatalog', x: product() }, {}, -3],
    ['standing in a page', { '@type': 'WebPage', x: product() }, {}, 0],
    ...['isRelatedTo', 'isSimilarTo', 'isAccessoryOrSparePartFor', 'isConsumableFor', 'mentions'].map(
      (name): [string, object, Partial<PageFacts>, number] => [
        `being named by ${name}`,
        { '@type': 'WebPage', [name]: product() },
        {},
        -3,
      ],
    ),
  ])('%s', async (_what, data, facts, score) => {
    expect(await scoreOf(data, facts)).toBe(score);
  });
});

describe('data that was left from another page', () => {
  const stale = async (more: object, facts: Partial<PageFacts>) => (await chosen(product(more), facts)).choice?.stale;
  const other = { heading: 'Calderwick Satchel red' };
  it.each<[string, object, Partial<PageFacts>, boolean]>([
    ['has another name and another price', { offers: offer }, { ...other, seen: [seen(1)] }, true],
    ['has another name and another address', { url: '/item/7' }, other, true],
    ['is not one with the price seen', { offers: offer }, { ...other, seen: [seen(54000)] }, false],
    ['is not one where no price is seen', { offers: offer }, other, false],
    ['is not one with the page’s address', { url }, { ...other, seen: [seen(1)] }, false],
    ['is not one whose code stands in the address', { sku: '1042' }, { ...other, seen: [seen(1)] }, false],
    ['is not one that the title names', {}, { ...other, titles: ['Ondrasse Palma'], seen: [seen(1)] }, false],
    ['has a title that says half of its name', {}, { ...other, titles: ['Ondrasse Satchel'], seen: [seen(1)] }, true],
    ['shares a third of its words', {}, { heading: 'Ondrasse Satchel red', seen: [seen(1)] }, true],
    ['is not one that shares half of them', {}, { heading: 'Ondrasse Satchel', seen: [seen(1)] }, false],
    ['is not one on a page without a heading', {}, { seen: [seen(1)] }, false],
    [
      'is not one that shares four words of eleven',
      { name: 'a b c d e f g h i j k' },
      { heading: 'a b c d 1 2 3 4 5 6 7', seen: [seen(1)] },
      false,
    ],
    [
      'is one that shares three words of nine',
      { name: 'a b c d e f g h i' },
      { heading: 'a b c 1 2 3 4 5 6', seen: [seen(1)] },
      true,
    ],
  ])('%s', async (_what, more, facts, wanted) => {
    expect(await stale(more, facts)).toBe(wanted);
  });
});

describe('which of several', () => {
  const names = (all: { product: { where: string } }[]) => all.map(({ product: { where } }) => where);
  it('ties where less than six tenths part them', async () => {
    const [a, b] = [product({ name: 'One' }), product({ name: 'Two', description: 'x' })];
    const tie = await chosen([a, b]);
    expect(names(tie.tie)).toEqual(['json-ld 2', 'json-ld 1']);
    expect(tie.products).toBe(2);
    expect((await chosen([a, product({ name: 'Two', offers: offer })])).tie).toEqual([]);
  });

  it('is none of a list unless much speaks for it', async () => {
    const list = (more: object) => ({
      '@type': 'ItemList',
      itemListElement: [product(more), product({ name: 'Other' })],
    });
    const facts = { heading: 'Ondrasse Palma Tote' };
    expect((await chosen(list({}), facts)).choice).toBeNull();
    expect((await chosen(list({ offers: offer }), facts)).choice?.score).toBe(2);
    expect((await chosen({ '@type': 'ItemList', itemListElement: product() })).choice?.score).toBe(-3);
    expect(await chosen({ '@type': 'WebPage' })).toEqual({ choice: null, tie: [], products: 0 });
  });

  it('does not tie with a thing in it, nor with one that holds it', async () => {
    const inner = (more: object) => ({ '@type': 'ProductModel', name: 'Inner', ...more });
    expect((await chosen(product({ model: inner({}), description: 'x' }))).tie).toEqual([]);
    expect((await chosen(product({ model: inner({ description: 'x' }) }))).tie).toEqual([]);
    expect((await chosen([product(), inner({ description: 'x' })])).tie).toHaveLength(2);
  });

  it('is the group where its variants are alike, and a variant that leads by six tenths', async () => {
    const group = (first: object) => ({
      '@type': 'ProductGroup',
      name: 'Group',
      hasVariant: [product(first), product({ name: 'Other' })],
    });
    expect((await chosen(group({ description: 'x' }), { titles: ['Ondrasse'] })).choice?.product.types).toEqual([
      'Product',
    ]);
    expect((await chosen(group({ description: 'x' }))).choice?.product.types).toEqual(['ProductGroup']);
  });

  it('tells other notations of it by type and name', async () => {
    const [one, same, less, other] = await itemsOf(
      product({ name: 'a b c d e' }),
      product({ name: 'a b c d e f' }),
      product({ name: 'a b c d x' }),
      { '@type': 'Thing', name: 'a b c d e' },
    );
    expect([same, less, other].map((item) => item && one && describesSame(item, one))).toEqual([true, false, false]);
  });
});
