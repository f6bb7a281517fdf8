import type { TechniquePage } from '../reading';
import { prose } from './prices';

const page = (script: string, inside = '<p class="price">€540.00</p>', attributes = ''): string =>
  `<html lang="en"><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p>${inside}</main><script${attributes}>${script}</script></body></html>`;
const assigned = (value: unknown, inside?: string): string =>
  page(`window.__STATE__ = ${JSON.stringify(value)};`, inside);
const piece = { title: 'Ondrasse Palma Tote', price: 540, currency: 'EUR' };
const head = (tags: Record<string, string>, inside = '', title = 'Ondrasse Palma Tote'): string =>
  `<html><head><title>${title}</title>${Object.entries(tags)
    .map(([name, content]) => `<meta property="${name}" content="${content}">`)
    .join('')}</head><body>${inside}</body></html>`;
const shown = '<h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p>';

/** What a page keeps for its scripts, what its head says, and what the buyer pointed at. */
export const state: Record<string, TechniquePage> = {
  'the piece in the page’s state': assigned({
    items: [
      {
        ...piece,
        brand: { name: 'Ondrasse' },
        color: 'Tan',
        material_name: 'Calf',
        model: { title: 'Palma' },
        seller: { login: 'harbour_attic', city: 'Leeds' },
      },
    ],
  }),
  'a thing under other names': assigned({
    product_name: 'Ondrasse Palma Tote',
    prix: '540',
    designer_name: 'Ondrasse',
    colour: { name: 'Tan' },
    shop_name: 'harbour_attic',
    location: { city: 'Ghent' },
  }),
  'a price in coins, where none is shown': assigned(
    { ...piece, price_amount: '54000' },
    '<button>Add to cart</button>',
  ),
  'a price in coins that is shown': assigned({ name: 'Ondrasse Palma Tote', price: 54000, brand: 'Ondrasse' }),
  'a thing of another price': assigned({ ...piece, price: 541, brand: 'Calderwick & Rook' }),
  'a thing of another title': assigned({ ...piece, title: 'Calderwick Satchel in red', brand: 'Calderwick & Rook' }),
  'a title that is alike at six tenths, no price shown': assigned(
    { ...piece, title: 'Ondrasse Palma Red Blue Green', brand: 'Ondrasse' },
    '<button>Add to cart</button>',
  ),
  'values that are numbers, addresses or words of a program': assigned({
    ...piece,
    brand: '7',
    color: 'https://x.example',
    material: 'true',
    model: 'null',
    city: ' ',
  }),
  'two things, the fuller one': assigned([
    { ...piece, brand: 'Short' },
    { ...piece, brand: 'Ondrasse', color: 'Tan' },
  ]),
  'JSON by its type': page(JSON.stringify({ ...piece, brand: 'Ondrasse' }), undefined, ' type="application/json"'),
  'a script that holds no data': page('function x() { return { price: 1 } }'),
  'a script elsewhere': page(
    JSON.stringify({ ...piece, brand: 'Ondrasse' }),
    undefined,
    ' type="application/json" src="/x.js"',
  ),
  'a longer description': assigned(
    { text: `${prose} It has a second pocket and its own dust bag, both seldom used.` },
    `<div class="description">${prose.slice(0, 60)}… Read more</div>`,
  ),
  'a description that is cut and stays so': assigned({ text: 'x' }, `<div class="description">${prose} …</div>`),
  'a description of nineteen characters': assigned(
    { text: `A tote of calf leather, and it goes on for more than eighty characters, as told here.` },
    '<div class="description">A tote of calf lea…</div>',
  ),
  'larger photos of those that are shown': assigned(
    { a: { small: '/p/a_200x200.jpg', large: '/q/a-big.jpg' }, b: ['/p/b.jpg', '/q/b.jpg'], c: { x: '/n/c.jpg' } },
    '<img src="/p/a.jpg"><img src="/p/b.jpg">',
  ),
  'a photo’s address in a script': page(
    'var u = "https://attic-arcade.example/p/a_1600x1600.jpg", v="https:\\/\\/attic-arcade.example\\/p\\/a_1800x1800.jpg";',
    '<img src="/p/a.jpg">',
  ),
  'twelve addresses beside each other': assigned(
    {
      a: Object.fromEntries(Array.from({ length: 12 }, (_, at) => [`k${at}`, at === 0 ? '/p/a.jpg' : `/z/${at}.jpg`])),
    },
    '<img src="/p/a.jpg">',
  ),
  'eleven addresses beside each other': assigned(
    {
      a: Object.fromEntries(Array.from({ length: 11 }, (_, at) => [`k${at}`, at === 0 ? '/p/a.jpg' : `/z/${at}.jpg`])),
    },
    '<img src="/p/a.jpg">',
  ),
  'texts of eighty characters and of seventy-nine': assigned({ a: 'a'.repeat(79), b: 'b'.repeat(80) }),
  'sixty-one things of sixty-one values': assigned(
    [...Array.from({ length: 60 }, (_, at) => ({ price: at })), { price: 60 }].concat([]).map((one, at) =>
      at === 0
        ? {
            ...one,
            ...Object.fromEntries(Array.from({ length: 61 }, (_, key) => [`v${key}`, 'w'.repeat(key === 0 ? 301 : 1)])),
          }
        : one,
    ),
  ),
  'the head of a product': head(
    {
      'og:title': 'Ondrasse Palma Tote | Attic & Arcade',
      'og:site_name': 'Attic & Arcade',
      'product:price:amount': '600.00',
      'product:price:currency': 'EUR',
      'product:sale_price:amount': '540.00',
      'product:original_price:amount': '700',
      'product:brand': 'Ondrasse',
      'product:color': 'Tan',
      'product:material': 'Calf',
      'product:retailer_item_id': 'R-1',
      'product:condition': 'used',
      'product:availability': 'instock',
      'og:type': 'product',
    },
    '<h1>Ondrasse Palma Tote</h1>',
    'Ondrasse Palma Tote - Attic & Arcade',
  ),
  'the head under older names': head(
    {
      'og:price:amount': '540',
      'og:price:currency': 'EUR',
      'og:brand': 'Ondrasse',
      'product:mfr_part_no': 'M-1',
      'product:retailer_item_id': 'R-1',
      'og:condition': 'new',
      'og:availability': 'oos',
    },
    shown,
  ),
  'a currency of the sale price, a part number': head(
    {
      'product:sale_price:amount': '540',
      'product:sale_price:currency': 'GBP',
      'og:price:amount': '600',
      'product:retailer_part_no': 'P-1',
    },
    '<h1>Ondrasse Palma Tote</h1>',
  ),
  'labels of a card': head(
    Object.fromEntries(
      [1, 2, 3, 4, 5, 6, 7].flatMap((at) => [
        [
          `twitter:label${at}`,
          ['Price', 'Brand', 'Colour', 'Model', 'Material', 'Condition', 'Seller'][at - 1] as string,
        ],
        [`twitter:data${at}`, `value ${at}`],
      ]),
    ),
    shown,
  ),
  'a card with half of its labels': head({ 'twitter:label1': 'Brand', 'twitter:data2': 'Ondrasse' }, shown),
  'a title without its site': head(
    { 'application-name': 'Arcade' },
    '<p class="price">€540.00</p>',
    'Arcade | Ondrasse Palma Tote in tan – Bags',
  ),
  'a title of one part, a title of the site alone': head(
    { 'og:title': 'Arcade - Arcade', 'og:site_name': 'Arcade' },
    '<p class="price">€540.00</p>',
    '  Ondrasse   Palma Tote ',
  ),
  'titles of each separator': head(
    { 'og:title': 'A b|Ondrasse Palma Tote', 'twitter:title': 'no' },
    '',
    'Ondrasse Palma Tote • x · y » z — w',
  ),
  'a card’s title': head({ 'twitter:title': 'Ondrasse Palma Tote' }, '<p class="price">€540.00</p>', ''),
  'a language by the root': '<html xml:lang="fr_BE"><body><h1>Ondrasse Palma Tote</h1></body></html>',
  'a language by the head': head({ 'og:locale': 'de_AT' }, shown),
  'a language that is none': `<html lang="x"><head><meta name="content-language" content="???"></head><body>${shown}</body></html>`,
  'a language by its small words': `<html><body>${shown}<p>Die Tasche ist sehr schön und nicht für den Alltag, auf der einen Seite mit Spuren.</p></body></html>`,
  'names in name, property and neither': `<html><head><meta name="OG:Title" content="  Ondrasse Palma Tote "><meta name="x" property=" og:brand " content="Ondrasse"><meta content="alone"><meta name="og:condition" content=" "></head><body>${shown}</body></html>`,
  'what was pointed at': {
    html: `<html lang="en"><body><h1>Bag</h1><i id="t">Ondrasse Palma Tote</i><i id="d">Tan<br>leather</i><i id="p">€600.00 €540.00</i><i id="m">Ondrasse</i><i id="o">Palma</i><i id="c">very good</i><i id="s">30 x 21 x 17 cm</i><i id="f">Tan</i><i id="l">Calf</i><i id="k">R-1</i><i id="w">3 March 2025</i><i id="r">14 days return</i><i id="v">free</i><i id="y">card</i><i id="n">harbour_attic (12)</i><div id="g"><span></span><img src="/p/a.jpg" alt="picked"></div><meta id="q" content="from content"></body></html>`,
    picks: (
      [
        'title',
        'description',
        'price',
        'maker',
        'model',
        'condition',
        'measures',
        'colour',
        'material',
        'itemCode',
        'posted',
        'returns',
        'shipping',
        'payment',
        'seller',
        'photo',
      ] as const
    ).map((field, at) => ({ field, selector: `#${'tdpmocsflkwrvyng'[at]}` })),
  },
  'what was pointed at and is not there, or is not of its kind': {
    html: `<html lang="en"><body><h1>Ondrasse Palma Tote</h1><i id="a">nothing</i><i id="b"></i><i id="e" aria-label="Labelled maker"></i><input id="h" value="Held model"><img id="i" alt="Alt colour"></body></html>`,
    picks: [
      { field: 'price', selector: '#a' },
      { field: 'condition', selector: '#a' },
      { field: 'measures', selector: '#a' },
      { field: 'posted', selector: '#a' },
      { field: 'returns', selector: '#a' },
      { field: 'title', selector: '#gone' },
      { field: 'title', selector: '#b' },
      { field: 'photo', selector: '#a' },
      { field: 'photo', selector: '#gone' },
      { field: 'maker', selector: '#e' },
      { field: 'model', selector: '#h' },
      { field: 'colour', selector: '#i' },
      { field: 'title', selector: '[[' },
    ],
  },
  'a price without a sign that was pointed at': {
    html: `<html lang="en"><body><h1>Ondrasse Palma Tote</h1><i id="p">was €600.00</i><i id="t">${'t'.repeat(401)}</i></body></html>`,
    picks: [
      { field: 'price', selector: '#p' },
      { field: 'material', selector: '#t' },
    ],
  },
  'an address that the page’s base changes': `<html lang="en"><head><base href="https://pictures.example/a/"></head><body>${shown}<img src="b.jpg"></body></html>`,
};
