import type { TechniquePage } from '../reading';
import { tote, withData } from './data';

const product = (name: string, more: object = {}): object => ({ '@type': 'Product', name, ...more });
const offers = (price: number) => ({ offers: { '@type': 'Offer', price, priceCurrency: 'EUR' } });
const other = product('Calderwick Satchel', { color: 'Red' });
const shown = '<main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></main>';
const variant = (colour: string, price: number, more: object = {}): object =>
  product(`Ondrasse Palma Tote ${colour}`, { color: colour, ...offers(price), ...more });

/** Which of several things that the data describes the page is about. */
export const which: Record<string, TechniquePage> = {
  'the one with the page’s address': withData([
    other,
    product('Something else', { url: 'http://www.attic-arcade.example/item/1042/?utm_source=x' }),
  ]),
  'the one with the page’s path on another host': withData([
    product('First thing'),
    product('Second thing', { url: 'https://shop.example/item/1042/' }),
  ]),
  'the one whose code stands in the address': withData([
    product('First thing', { sku: '999' }),
    product('Second thing', { productID: 'id:1042' }),
  ]),
  'a code of two characters says nothing': {
    html: withData([product('First thing', { sku: '42' }), product('Second thing', { sku: '77' })]),
    url: 'https://attic-arcade.example/item/42',
  },
  'the one that the heading names': withData([other, product('Ondrasse Palma Tote', { color: 'Tan' })]),
  'the one with an offer at the price seen': withData(
    [
      product('Ondrasse Palma Tote', { color: 'Red', ...offers(600) }),
      product('Ondrasse Palma Tote', { color: 'Tan', ...offers(540) }),
    ],
    shown,
  ),
  'the main entity': withData([
    product('A bag'),
    { '@type': 'WebPage', mainEntity: product('B bag', { color: 'Tan' }) },
  ]),
  'the one with a main entity of page': withData([
    product('A bag'),
    product('B bag', { color: 'Tan', mainEntityOfPage: { '@type': 'WebPage', '@id': '#x' } }),
  ]),
  'a tie of two, and what is told of it': withData([
    product('Ondrasse Palma Tote one', offers(500)),
    product('Ondrasse Palma Tote two', offers(510)),
  ]),
  'two of one name in one notation': withData([
    product('Ondrasse Palma Tote', { color: 'Tan' }),
    product('Ondrasse Palma Tote', { color: 'Red' }),
  ]),
  'things of a list, none of them this page': withData(
    {
      '@type': 'ItemList',
      itemListElement: [1, 2, 3].map((place) => ({ '@type': 'ListItem', item: product(`Satchel ${place}`) })),
    },
    '<h1>Bags</h1>',
  ),
  'a thing of a list that is this page': withData({
    '@type': 'ItemList',
    itemListElement: [{ item: product('Ondrasse Palma Tote', { color: 'Tan' }) }, { item: other }],
  }),
  'what is related': withData(
    product('Ondrasse Palma Tote', {
      color: 'Tan',
      isRelatedTo: [product('Ondrasse Palma Tote small', { color: 'Red' })],
      isSimilarTo: other,
      isAccessoryOrSparePartFor: product('Ondrasse Palma'),
    }),
  ),
  'offers of a shop’s catalogue': withData([
    {
      '@type': 'Organization',
      hasOfferCatalog: { '@type': 'OfferCatalog', itemListElement: [product('Ondrasse Palma Tote', { color: 'Red' })] },
    },
    product('Palma Tote', { color: 'Tan' }),
  ]),
  'data left from another page': withData(
    product('Calderwick Satchel', { color: 'Red', url: '/item/7', image: '/p/red.jpg', ...offers(90) }),
    shown,
  ),
  'data of another name at the price seen': withData(
    product('Calderwick Satchel', { color: 'Red', ...offers(540) }),
    shown,
  ),
  'data of another name with another address and no price': withData(
    product('Calderwick Satchel', { color: 'Red', url: '/item/7' }),
  ),
  'data of another name that the title has': {
    html: `<html><head><title>Calderwick Satchel</title><script type="application/ld+json">${JSON.stringify(product('Calderwick Satchel', offers(90)))}</script></head><body>${shown}</body></html>`,
  },
  'a name that shares a third of its words with the heading': withData(
    product('Palma Satchel Red', offers(90)),
    '<main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></main>',
  ),
  'data without a heading on the page': withData(product('Calderwick Satchel', { color: 'Red' }), '<p>Nothing</p>'),
  'a group and its variants that differ in nothing shown': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: [variant('Tan', 540), variant('Red', 500), variant('Blue', 600)],
  }),
  'a variant with the page’s address': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: [variant('Tan', 540, { url: '/item/1042' }), variant('Red', 500, { url: '/item/7' })],
  }),
  'variants of one price': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: [variant('Tan', 540), variant('Red', 540)],
  }),
  'variants in two currencies': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: [variant('Tan', 540), product('Palma Red', { offers: { price: 500, priceCurrency: 'USD' } })],
  }),
  'a variant that names its group': withData([
    variant('Tan', 540, { isVariantOf: { '@type': 'ProductGroup', name: 'Ondrasse Palma Tote', material: 'Calf' } }),
    variant('Red', 500),
  ]),
  'a single variant': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: variant('Tan', 540),
  }),
  'a service, a shop and an event with offers': withData([
    { '@type': 'Service', name: 'Repair', ...offers(5) },
    { '@type': 'WebSite', ...offers(6) },
    { '@type': 'Event', name: 'Sale', ...offers(7) },
    { '@type': 'Organization', ...offers(8) },
  ]),
  'a work of art, and a thing of no type with an offer': withData([
    { '@type': 'VisualArtwork', name: 'Print' },
    { name: 'Ondrasse Palma Tote', ...offers(8) },
  ]),
  'a model, and an offer in words': withData([
    { '@type': 'ProductModel', name: 'Ondrasse Palma Tote' },
    { '@type': 'Thing', name: 'Thing', offers: 'none' },
  ]),
  'some products': withData({ '@type': 'SomeProducts', name: 'Ondrasse Palma Tote', ...offers(8) }),
  'a product whose values are things': withData({
    ...tote,
    name: { '@type': 'Text', name: 'Ondrasse Palma Tote' },
    brand: { url: 'https://ondrasse.example' },
    color: { '@id': '#tan' },
    material: { value: 'Calf' },
    model: { contentUrl: 'm' },
  }),
};
