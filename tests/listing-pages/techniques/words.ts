import type { TechniquePage } from '../reading';
import { prose } from './prices';

const page = (inside: string, lang = 'en', title = 'Ondrasse Palma Tote'): string =>
  `<html lang="${lang}"><body><main><h1>${title}</h1><p class="price">€540.00</p>${inside}</main></body></html>`;
const lines = (...all: string[]): string => page(all.map((line) => `<p>${line}</p>`).join(''));
const long = 'This tote of smooth calf leather was bought in Ghent by my aunt. ';

/** Descriptions, labelled values, and what the text says. */
export const words: Record<string, TechniquePage> = {
  'a description by its name': page(
    `<div class="item-description"><p>Description</p><p>${prose}</p></div><div id="beschreibung">short text, but 15</div>`,
  ),
  'a description of the longest named block': page(
    `<div class="description">${prose}</div><div data-testid="product-description">${prose} ${long}</div><div itemprop="description">tiny text here</div>`,
  ),
  'named blocks that are none': page(
    `<div class="description-toggle x">14 characters</div><footer class="description">${long}</footer><div class="description" hidden>${long}</div><p>${prose}</p>`,
  ),
  'a description that holds the heading': `<html lang="en"><body><div class="description"><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p><p>${prose}</p></div></body></html>`,
  'a description under its heading': page(
    `<h2>Description</h2><p>${long}</p><p>Second part.</p><h3>Smaller</h3><p>Third part.</p><h2>Shipping</h2><p>Other words follow here, as many as you like.</p>`,
  ),
  'a description under a bold word': page(
    `<div><b>Description</b><p>${long}</p><b>Delivery</b><p>Other words follow here.</p></div>`,
  ),
  'a description three levels up': page(
    `<div><div><div><h3>Details</h3></div></div><p>${long}</p></div><div><div><div><div><h4>Item description</h4></div></div></div><p>Far away text that is long enough.</p></div>`,
  ),
  'a heading with too little under it': page('<div><h2>Description</h2><p>Only 14 chars.</p></div>'),
  'the longest run of prose': page(
    `<div><p>${long}</p><p>${long}${long}</p><p>Brand: Ondrasse</p><p>${prose}</p></div><ul><li>${long}</li></ul><button>${long}${long}${long}${long}</button>`,
  ),
  'prose too short': page('<p>Thirty-nine characters of prose in it.</p>'),
  'prose at the least': page('<p>Forty characters of prose are in here.12.</p>'),
  'descriptions of the head': `<html><head><meta property="og:description" content="A &lt;b&gt;tan&lt;/b&gt; tote &amp;amp; strap"><meta name="description" content="Meta words of it"><meta name="twitter:description" content="No"></head><body><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></body></html>`,
  'the description of a card':
    '<html><head><meta name="twitter:description" content="Card words of it"></head><body><h1>Ondrasse Palma Tote</h1></body></html>',
  'a definition list, a table, rows and lines':
    page(`<dl><dt>Brand</dt><dd>Ondrasse</dd><dt>Alone</dt><dt>Colour</dt><dd>Tan</dd></dl><table><tr><th>Material</th><td>Calf</td></tr><tr><td>Model</td><td>Palma</td></tr></table>
    <div><span>Condition</span><span>Very good</span></div><p>Year: 1995</p><li><b>Lining</b> suede</li><li>Closing <b>zip</b></li><div><h3>Origin</h3><p>Belgium</p><p>x</p><p>y</p><p>z</p></div><div><a>Not</a><a>name</a></div><div><em>Note!</em><em>value</em></div><div><small>It is a whole sentence.</small><i>value</i></div><div><label>No.</label><i>7</i></div>`),
  'names and values at their lengths': page(
    `<dl><dt>${'n'.repeat(60)}</dt><dd>${'v'.repeat(600)}</dd><dt>${'n'.repeat(61)}</dt><dd>v</dd><dt>x</dt><dd>${'v'.repeat(601)}</dd><dt>12.5</dt><dd>no</dd><dt></dt><dd>no</dd><dt>empty</dt><dd></dd><dt>two<br>lines</dt><dd>no</dd></dl><div><b>${'m'.repeat(40)}</b><i>v40</i></div><div><b>${'m'.repeat(41)}</b><i>v41</i></div><p>${'o'.repeat(40)} <b>v</b></p><p>${'o'.repeat(41)} <b>v</b></p>`,
  ),
  'rows of many children': page(
    `<div><b>a</b>${'<i>b</i>'.repeat(3)}</div><div><b>c</b>${'<i>d</i>'.repeat(4)}</div><div><h4>e</h4>${'<i>f</i>'.repeat(4)}</div><div><i>g: h</i>${'<br>'.repeat(9)}</div><div><i>j: k</i>${'<br>'.repeat(11)}</div>`,
  ),
  'lines with a bracket, a tab, two colons, a web address': lines(
    '【素材】 calf',
    'Ref：A-1',
    'Time 10:30',
    'https://x.example/a',
    '12:30 today',
    'Empty:',
    `${'n'.repeat(50)}: fifty`,
    `${'n'.repeat(51)}: fifty-one`,
    `Long: ${'v'.repeat(401)}`,
    `Longer: ${'v'.repeat(402)}`,
  ),
  'every label': lines(
    'Brand: Ondrasse',
    'Model: Palma',
    'Ref: R-1',
    'Material: Calf',
    'Colour: Tan',
    'Serial number: 7 X 95',
    'Condition: Excellent',
    'Measurements: 30 x 21 x 17 cm',
    'Seller: harbour_attic (318) 99%',
    'Location: Leeds',
    'Listed: 3 March 2025',
    'Member since: 2019',
    'Shipping: €7 tracked',
    'Payment: card',
    'Returns: 14 days',
    'Watchers: 1,204',
    'Bids: 12',
    'Rating: 4.8/5 (210)',
    'Sales: 3k',
    'Price: €540.00',
  ),
  'labels whose values are none': lines(
    'Brand: n/a',
    `Model: ${'m'.repeat(121)}`,
    'Condition: blue',
    'Listed: soon',
    'Returns: maybe',
    'Watchers: many',
    `Seller: ${'s'.repeat(61)}`,
    'Colour: unknown',
    'Seller: Contact',
    'Location: Home',
    'Posted: 03/04/2025',
  ),
  'labels above their values': lines(
    'Brand',
    'Ondrasse',
    'Colour',
    'Material',
    'Calf',
    'Seller',
    'Name: attic_anna',
    'Condition',
    'State: x',
  ),
  'labels before their value without a colon': lines(
    'Posted on 3 March 2025',
    'Listed the 5 March 2025',
    'Sold by Harbour Attic',
    'Ships from Leeds',
    'Member since 2019',
    'Located in : x',
    `Ships from ${'L'.repeat(95)}`,
  ),
  'places on lines of their own': lines(
    '50667 Köln',
    'D-50667 Bonn',
    'Milano (MI)',
    '3 Mar 2026 · Leeds, West Yorkshire',
    '123 Kleve',
    `1234 ${'K'.repeat(80)}`,
  ),
  'what the text says of the seller': lines(
    'Seller',
    'harbour_attic',
    '4.9 (318)',
    '98.5% positive feedback (1,204)',
    '210 sales',
    'Member since May 2019',
    'Private seller',
    '12 people are watching',
    '3 bids',
    'Returns accepted within 30 days',
    'Free shipping',
    'Ships to Belgium only',
    'Payment by card or cash',
    'Reserved',
  ),
  'a rating far from the seller': lines(
    '4.9 out of 5 (318 ratings)',
    '4.8 out of 5',
    'x',
    'Seller: harbour_attic',
    'a',
    'b',
    'c',
    'd',
    'e',
    '5.0 (7)',
    'f',
    '4.0 (8)',
    '5.1 (9)',
  ),
  'a name that opens the line of its stars': lines('Seller: harbour_attic', 'harbour_attic4.9 (318)', '0.0 (5)'),
  'conditions in the title and in lines': page(
    `<p>Very good condition</p><p>${'x'.repeat(60)} very good condition</p><p>used, ${'x'.repeat(70)}</p>`,
    'en',
    'Ondrasse Palma Tote, as new',
  ),
  'a used piece that is graded finer': `<html><head><script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","offers":{"price":540,"priceCurrency":"EUR","itemCondition":"UsedCondition","hasMerchantReturnPolicy":{"returnPolicyCategory":"MerchantReturnUnlimitedWindow"}}}</script></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><dl><dt>Condition</dt><dd>Very good</dd><dt>Returns</dt><dd>14 days</dd></dl></main></body></html>`,
  'sold, in a line and in a sentence': lines('SOLD', 'This bag was sold with its box'),
  'sold in one size': lines('Size 38: sold out', 'Add to cart'),
  'removed, reserved, and a long line that tells': lines(
    'This listing has been removed',
    'Reserved for Anna',
    `${'x'.repeat(100)} this item has been sold`,
  ),
  'a button that offers what nothing else tells of': page('<button>Buy now</button>'),
  'data that offers what the text calls sold out': `<html><head><script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","offers":{"price":540,"priceCurrency":"EUR","availability":"InStock"}}</script></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p>Sold out</p><button>Add to cart</button></main></body></html>`,
  'measures of the description': page(
    `<div class="description">A tote of 30 x 21 x 17 cm, strap 100 cm, and a ruler of 15 cm far behind in the words.</div>`,
  ),
  'a lone measure without a name': page(
    `<div class="description">A tote and a ruler of 15 cm far behind in the words.</div>`,
  ),
  'a link to the seller’s page': page(
    '<a href="/users/harbour_attic">harbour_attic<br>(12)</a><a href="/member/x">no</a><a href="/shop/other_name">other</a><a href="/sellers/a_b">x</a>',
  ),
  'a heading that begins with words for screen readers':
    '<html><head><title>Ondrasse Palma Tote</title><meta property="og:title" content="Ondrasse Palma Tote"></head><body><main><h1>Details about Ondrasse Palma Tote</h1><p class="price">€540.00</p></main></body></html>',
  'a heading that begins with its maker':
    '<html><head><title>Palma Tote</title><meta property="og:title" content="Palma Tote"><meta property="product:brand" content="Ondrasse"></head><body><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></main></body></html>',
  'a heading whose end the tab alone says':
    '<html><head><title>Palma Tote in tan</title></head><body><main><h1>Fine old Ondrasse Palma Tote in tan</h1><p class="price">€540.00</p></main></body></html>',
  'templates that nothing filled':
    '<html><head><title>{{title}}</title><meta property="product:brand" content="Unbranded"><meta property="product:color" content="<%= color %>"></head><body><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p><p>Model: [[model]]</p><p>Material: %MATERIAL%</p></main></body></html>',
};
