import type { TechniquePage } from '../reading';
import { tote, withData } from './data';
import { many } from './many';
import { prose } from './prices';

const main = (inside: string): string =>
  `<main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">€540.00</p>${inside}</main>`;
const page = (inside: string, head = ''): string =>
  `<html lang="en"><head>${head}</head><body>${main(inside)}</body></html>`;
const offered = (availability: string | string[], inside: string): string =>
  withData({ ...tote, offers: { price: '540', priceCurrency: 'EUR', availability } }, main(inside));
const button = '<button>Add to cart</button>';
const nulls = (count: number): string => `[${Array(count).fill('null').join(',')}]`;

/** What is offered, pointed at and named by the data, at more of its edges. */
export const factsEdges: Record<string, TechniquePage> = {
  'sold in words, offered by the data and by a button': offered('InStock', `<p>Sold</p><p>Reserved</p>${button}`),
  'sold in words, offered by the data without a button': offered('InStock', '<p>Sold</p>'),
  'sold in words and by the data, beside a button': offered('SoldOut', `<p>Sold</p>${button}`),
  'sold in words beside a button': page(`<p>Sold</p>${button}`),
  'a button alone, and one that sells nothing': page(`${button}<button>Follow</button>`),
  'a button that sells nothing': page('<button>Follow</button>'),
  'four hundred labelled values, and more': withData(
    {
      ...tote,
      additionalProperty: Array.from({ length: 150 }, (_, at) => ({ name: `d${at}`, value: `v${at}` })),
    },
    main(`<dl>${many(300, (at) => `<dt>n${at}</dt><dd>w${at}</dd>`)}</dl>`),
  ),
  'pointed at what two attributes say, at words for screen readers and at hidden ones': {
    html: page(
      '<i id="a" content="By content" value="By value" alt="By alt"></i><i id="b" value="By value" alt="By alt"></i><b id="c"><span class="sr-only">For screen readers</span> and all</b><b id="d" hidden>hidden</b><b id="e" aria-label="By label" content="By content"></b>',
    ),
    picks: [
      { field: 'maker', selector: '#a' },
      { field: 'model', selector: '#b' },
      { field: 'material', selector: '#c' },
      { field: 'colour', selector: '#d' },
      { field: 'itemCode', selector: '#e' },
    ],
  },
  'pointed at more than twenty thousand characters': {
    html: page(`<div id="a">${many(25, () => `<p>${'word '.repeat(200)}</p>`)}</div>`),
    picks: [{ field: 'description', selector: '#a' }],
  },
  'pointed at pictures, and at none': {
    html: page('<figure id="a"><i></i><img src="/p/a.jpg" alt="the back"></figure><figure id="b"><i></i></figure>'),
    picks: [
      { field: 'photo', selector: '#a' },
      { field: 'photo', selector: '#b' },
      { field: 'photo', selector: '#none' },
    ],
  },
  'a group of one variant': withData({
    '@type': 'ProductGroup',
    name: 'Ondrasse Palma Tote',
    hasVariant: [{ ...tote, color: 'Tan', offers: { price: '540', priceCurrency: 'EUR' } }],
  }),
  'a product that was made known on a day': withData({
    ...tote,
    dateCreated: '2025-12-24',
    offers: { price: '540', priceCurrency: 'EUR' },
  }),
  'a product that was published on a day, and its offer': withData({
    ...tote,
    datePublished: '2025-12-23T10:00',
    dateCreated: '2025-12-24',
    offers: { price: '540', priceCurrency: 'EUR', validFrom: '2025-12-25' },
  }),
  'fifty thousand parts of data': withData([nulls(49_999), tote]),
  'fifty thousand parts of data, and one more': withData([nulls(50_000), tote]),
  'data within its parts': withData([nulls(49_990), tote]),
  'a frame that two names make a description of': page(
    '<iframe src="https://frames.example/a" class="de" id="sc" height="100"></iframe><div class="cont"><iframe src="https://frames.example/b" class="ent" height="100"></iframe></div>',
  ),
  'a frame whose holder names it': page(
    '<div class="description"><iframe src="https://frames.example/c" height="100"></iframe></div>',
  ),
  'frames of a hundred and ninety-nine pixels, and of more': page(
    '<iframe src="https://frames.example/d" height="199"></iframe><iframe src="https://frames.example/e" height="200"></iframe>',
  ).replace(prose, ''),
  'a price within its heading, and behind it':
    '<html lang="en"><body><main><h1>Ondrasse Palma Tote <b>€540.00</b></h1><p>€541.00</p></main></body></html>',
  'a heading that the title for sharing tells from another':
    '<html lang="en"><head><meta property="og:title" content="Calderwick Satchel"></head><body><main><h2>Ondrasse Palma Tote</h2><h2>Calderwick Satchel</h2><p class="price">€540.00</p></main></body></html>',
  'types of a page’s head': page('', '<meta property="og:type" content="og:Product.item"><title>Null</title>'),
  'microdata whose parts refer to what is not there': `<main><div itemscope itemtype="https://schema.org/Product" itemref="none a"><h1 itemprop="name">Ondrasse Palma Tote</h1></div><p id="a"><i itemprop="color">Tan</i></p><i itemprop="material">of nothing</i>${'<p class="price">€540.00</p>'}</main>`,
};
