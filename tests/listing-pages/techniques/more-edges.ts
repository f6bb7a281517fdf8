import type { TechniquePage } from '../reading';
import { tote, withData } from './data';
import { many } from './many';
import { prose } from './prices';

const page = (inside: string, head = ''): string =>
  `<html lang="en"><head>${head}</head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">€540.00</p>${inside}</main></body></html>`;
const inDivs = (levels: number, inside: string): string =>
  `${'<div>'.repeat(levels)}${inside}${'</div>'.repeat(levels)}`;
const cardsOf = (levels: number): string =>
  many(4, (at) => `<article>${inDivs(levels, `<a href="/item/${at}">Bag ${at}</a>`)}<p>€${at + 1}5.00</p></article>`);
const bid = (...lines: string[]): string => page(lines.map((line) => `<p>${line}</p>`).join(''));
const stated = (value: unknown, inside = '<button>Add to cart</button>'): string =>
  `<html lang="en"><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p>${inside}</main><script>x = ${JSON.stringify(value)}</script></body></html>`;

/** More of each side of a limit. */
export const moreEdges: Record<string, TechniquePage> = {
  'cards whose link lies five levels inside': page(cardsOf(4)),
  'cards whose link lies six levels inside': page(cardsOf(5)),
  'sixty-one controls': page(many(61, (at) => `<button>Press ${at}</button>`)),
  'a form that is named as a button': page(
    '<form class="cta btn">words of a form</form><a class="my-button">A link</a><a class="button-less" value="by value"></a>',
  ),
  'frames named for their words': page(
    '<iframe src="https://frames.example/a" name="itemtext"></iframe><iframe src="https://frames.example/b" id="detail"></iframe><iframe src="https://frames.example/c" height="300" width="728"></iframe><iframe src="https://frames.example/d" height="300" width="120"></iframe><iframe src="https://frames.example/e" height="x"></iframe>',
  ),
  'frames of the widths of advertisements': `<html lang="en"><body><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p>${[120, 160, 300, 320, 336, 728, 970, 500].map((width) => `<iframe src="https://frames.example/${width}" height="250" width="${width}"></iframe>`).join('')}</main></body></html>`,
  'a picture elsewhere of which one version is known': page(
    '<img src="/p/a.jpg"><a href="/item/8"><img src="/p/new.jpg" data-src="/p/a.jpg"></a><a href="/item/8"><img src="/p/newer.jpg" data-src="/p/newest.jpg"></a>',
  ),
  'widths that are none, and one version under two widths': page(
    '<img width="0" src="/p/a.jpg" srcset="/p/a_1.jpg 2x"><img width="99999" src="/p/c.jpg" srcset="/p/c_1.jpg 1x"><img width="100000" src="/p/d.jpg" srcset="/p/d_1.jpg 1x"><img srcset="/p/b.jpg 400w, /p/b.jpg 800w, /p/b.png 600w">',
  ),
  'addresses of four characters and of five': page(
    '<img data-src="/i/1"><img data-src="/i/12"><img data-src="  /i/image3  ">',
  ),
  'pictures that the page made without a width': {
    html: page('<img src="blob:https://attic-arcade.example/1"><img src="blob:https://attic-arcade.example/2">'),
    properties: {
      'img[src$="/1"]': { naturalWidth: 0, naturalHeight: 500 },
      'img[src$="/2"]': { naturalWidth: 500, naturalHeight: 80 },
    },
  },
  'a gallery of five hundred and more parts': page(
    `<div data-gallery='${JSON.stringify([...Array.from({ length: 99 }, () => 'x'), '/p/last.jpg', '/p/beyond.jpg'])}'></div><div data-gallery-2='${JSON.stringify(Object.fromEntries(Array.from({ length: 101 }, (_, at) => [`k${at}`, at > 98 ? `/p/k${at}.jpg` : 'x'])))}'></div>`,
  ),
  'pointed at what only attributes say': {
    html: page(
      '<i id="a" content="Content maker"></i><i id="b">€90.00 from €80.00</i><i id="c">was €600.00, now €540.00</i>',
    ),
    picks: [
      { field: 'maker', selector: '#a' },
      { field: 'price', selector: '#c' },
    ],
  },
  'a price of two meanings that was pointed at': {
    html: page('<i id="b">1.299 €</i><i id="d"> 03/04/2025 </i>'),
    picks: [
      { field: 'price', selector: '#b' },
      { field: 'posted', selector: '#d' },
    ],
  },
  'data that says offered and removed, text that says sold': withData(
    {
      ...tote,
      offers: [
        { price: 540, priceCurrency: 'EUR', availability: 'InStock' },
        { price: 541, priceCurrency: 'EUR', availability: 'Discontinued' },
      ],
    },
    `<main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p>Sold</p><p>Available</p><button>Buy now</button></main>`,
  ),
  'microdata with a table, a preformatted text and nested blocks':
    '<main itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">Ondrasse Palma Tote</h1><div itemprop="description"><table><tr><td>a</td><td>b</td></tr><tr><th>c</th><td>d</td></tr></table><pre>e\n  f</pre><p>g <b>h</b></p>i<ul><li>j</li></ul>k<select><option>no</option></select></div><span itemprop="color">  Tan\n brown </span></main>',
  'data inside arrays inside arrays': withData(`${'['.repeat(62)}{"@type":"Product","name":"Deep"}${']'.repeat(62)}`),
  'data inside one array more': withData(`${'['.repeat(64)}{"@type":"Product","name":"Deep"}${']'.repeat(64)}`),
  'a literal inside lists': withData({ ...tote, color: { '@list': [{ '@set': [{ '@value': 'Tan' }] }] } }),
  'a long name of a property in a place': withData({
    ['p'.repeat(41)]: { ...tote, offers: { price: 1, priceCurrency: 'EUR' } },
  }),
  'shipping without an amount, and without a currency': withData({
    ...tote,
    offers: {
      price: 1,
      priceCurrency: 'EUR',
      shippingDetails: [{ shippingRate: { currency: 'EUR' } }, { shippingRate: { value: 5 } }],
    },
  }),
  'RDFa whose subject is told twice':
    '<html><body vocab="http://schema.org/"><main typeof="Product" about="#a" resource="#b"><h1 property="name">Ondrasse Palma Tote</h1></main><p about="#a" property="color">Tan</p><p about="#b" property="material">Calf</p><div resource="#a"><b property="model">Palma</b></div><div prefix="x: https://schema.org/ y:"><i about="#a" property="x:mpn">M-1</i></div><link property="sku" resource="#c" about="#a"></body></html>',
  'a seller’s name of sixty characters': page(`<p>Seller: ${'s'.repeat(60)}</p>`),
  'two currencies beside one amount': page('<i data-price="77.00" data-currency="EUR" data-currency-code="USD"></i>'),
  'two copies of one price for screen readers': `<html lang="en"><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price"><span class="sr-only">€540.00</span><span class="sr-only">Price €540.00</span><span>€<b>540</b>00</span></p></main></body></html>`,
  'a description of a hidden, of an outer and of the main part': page(
    `<div class="description" hidden>${prose} hidden</div><aside class="related"><div class="description">${prose} of another</div></aside>`,
  ).replace('<main>', '<main class="description">'),
  'an auction’s own bid below its label, and amounts of which one is certain': bid(
    'Your bid',
    '€541.00',
    'Starting price: €540.00',
    'No bids yet',
  ),
  'no bid yet, and a price in words': bid('Starting price: €100.00', 'Worth about €700.00 today', '0 bids'),
  'names and values in headers and in emphasis': page(
    '<table><tr><th>Colour</th><td>Tan</td></tr><tr><th>Alone</th></tr></table><div><em>Material</em><i>Calf</i></div><div><h5>Model</h5><p>Palma</p></div><div><dt>Brand</dt><i>Ondrasse</i></div>',
  ),
  'a line that a related heading ends, next to the main part':
    '<html lang="en"><body><h3>Related</h3><p>gone</p><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></main></body></html>',
  'a thing of the state beside a former price': stated(
    { title: 'Ondrasse Palma Tote', price: 540, brand: 'Ondrasse' },
    '<p class="price"><s>€600.00</s></p><button>Add to cart</button>',
  ),
  'a thing of the state that is alike at eight tenths': stated({
    title: 'Ondrasse Palma Tote Red Blue',
    price: '540.00',
    currency: 'EUR',
    brand: 'Ondrasse',
  }),
  'one measure of the data, and more in the description': withData({
    ...tote,
    width: '30 cm',
    description: 'A bag of 25 x 19 x 15 cm.',
  }),
  'five hundred and one parts of the state': stated({
    list: [...Array.from({ length: 499 }, () => 1), { price: 500 }, { price: 501 }],
  }),
  'a text of the state beyond its length': stated({ a: 'w'.repeat(20_001) }),
  'two prices of the data of which one is seen': withData(
    {
      ...tote,
      offers: [
        { price: 600, priceCurrency: 'EUR' },
        { price: 540, priceCurrency: 'EUR' },
      ],
    },
    `<main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">€540.00</p></main>`,
  ),
  'a seller of whom only the stars are told': page('<p>Seller: (318)</p>'),
  'roles of advertisements': page(
    '<div role="complementary-ad">advert words</div><div role="complementary">stays</div>',
  ),
  'the shop’s heading, and the piece’s of the second level':
    '<html lang="en"><body><nav><h1>Attic and Arcade</h1></nav><h2>Palma Tote</h2><p class="price">€540.00</p></body></html>',
  'widths of a price’s rows, of coins and of yen': page(
    '<i data-price="54000" data-currency="JPY"></i><i data-price="99" data-currency="EUR"></i><i data-price="54001" data-currency="KWD"></i>',
  ),
  'forty-one texts of the state': stated({
    title: 'x',
    list: Array.from({ length: 41 }, (_, at) => `${at} `.padEnd(80, 'w')),
  }),
  'a meta without content, and the next': page(
    '',
    '<meta property="product:brand" content=" "><meta property="product:brand" content="Ondrasse"><meta property="product:color" content="Tan"><meta property="product:color" content="Red">',
  ),
  'a heading of the second level, outside and inside':
    '<html lang="en"><head><title>Ondrasse Palma Tote</title></head><body><nav><h2>Ondrasse Palma Tote</h2></nav><h2>Palma Tote</h2><p class="price">€540.00</p></body></html>',
};
