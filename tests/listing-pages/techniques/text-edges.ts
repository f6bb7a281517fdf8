import type { TechniquePage } from '../reading';
import { tote, withData } from './data';
import { many } from './many';
import { prose } from './prices';

const price = '<p class="price">€540.00</p>';
const page = (inside: string, head = '', lang = 'en'): string =>
  `<html lang="${lang}"><head>${head}</head><body><main><h1>Ondrasse Palma Tote</h1>${price}${inside}</main></body></html>`;
const shared = '<meta property="og:title" content="Ondrasse Palma Tote">';
const lines = (...all: string[]): string => page(all.map((line) => `<p>${line}</p>`).join(''));
const words = (length: number, last = '.'): string => 'Own words '.repeat(length).slice(0, length - 1) + last;
const heading = (pieces: number): string => {
  const letters = [...'Description'];
  return letters.map((letter, at) => (at > 11 - pieces ? `<i>${letter}</i>` : letter)).join('');
};

/** Descriptions, labelled values and seen prices at each side of their limits. */
export const textEdges: Record<string, TechniquePage> = {
  'a description of forty thousand characters': page(
    `<div class="description">${many(40, (at) => `<p>${at} ${words(996)}</p>`)}</div>`,
  ),
  'forty thousand characters under a heading': page(
    `<section><h2>Description</h2>${many(40, (at) => `<p>${at} ${words(996)}</p>`)}</section>`,
  ),
  'forty thousand characters of prose': page(`<section>${many(40, (at) => `<p>${at} ${words(996)}</p>`)}</section>`),
  'two named blocks of one length': page(
    `<div class="description">${prose} a</div><div class="description">${prose} b</div>`,
  ),
  'a block named by each attribute': page(
    `<div id="description">${prose}</div><div data-testid="description">${prose} by its test name</div><div itemprop="description">${prose} by its property, which is longer</div>`,
  ),
  'a block named by an id alone': page(`<div id="item-description">${prose}</div>`),
  'a name that two attributes make together': page(`<div class="descrip" id="tion">${words(30)}</div>`),
  'named parts that hold the whole page, without a heading': `<html lang="en" class="description"><head>${shared}</head><body class="description"><main class="description">${price}<p>${prose}</p></main></body></html>`,
  'a named block on a page without a heading': `<html lang="en"><head>${shared}</head><body>${price}<div class="description"><p>${prose}</p></div><p>${prose} More, and longer than that.</p></body></html>`,
  'a card’s description on a listing': page(
    '',
    '<meta name="twitter:description" content="Card words of it"><meta property="og:title" content="Ondrasse Palma Tote">',
  ),
  ...Object.fromEntries(
    [5, 6, 7, 8, 9].map((pieces) => [
      `a heading “Description” in ${pieces} parts`,
      page(`<h2>${heading(pieces)}</h2><p>${words(35)}</p><ul><li>${words(80)}</li></ul>`),
    ]),
  ),
  'fourteen characters under a heading, and fifteen': page(
    `<div><h2>Description</h2><p>${words(14)}</p></div><div><h3>Description</h3><p>${words(15)}</p></div>`,
  ),
  'a heading three levels down, and four': page(
    `<div id="a"><div><div><h2>Description</h2></div></div><p>${words(39)}</p></div>`,
  ),
  'a heading four levels down': page(
    `<section><div id="a"><div><div><h2>Description</h2></div></div></div><p>${words(39)}</p></section>`,
  ),
  'a hidden heading, and one outside': page(
    `<div><h2 hidden>Description</h2><p>${words(50)}</p></div><aside class="related"><h2>Description</h2><p>${words(60)}</p></aside>`,
  ),
  'thirteen places of prose, the last of the longest run': page(
    many(13, (at) =>
      at < 12
        ? `<div><p>${words(60)}</p><h3>${at}</h3><p>${words(61)}</p></div>`
        : `<div><p>It is the longest. ${words(95)}</p></div>`,
    ),
  ),
  'two runs of one length': page(`<div><p>First. ${words(60)}</p></div><div><p>Other. ${words(60)}</p></div>`),
  'prose in a link, a label and a heading': page(
    `<a href="#x">${words(90)}</a><label>${words(91)}</label><h4>${words(92)}</h4><option>${words(93)}</option><p>${words(50)}</p>`,
  ),
  'prose in parts of its block': page(
    `<div><span>${words(45)}</span><b>${words(46)}</b><em>${words(47)}</em><i>${words(48)}</i><strong>${words(49)}</strong><font>${words(50)}</font></div><p>${words(70)}</p>`,
  ),
  'leading labels of lines': lines(
    'Sold by : harbour_attic',
    'Posted on the 3 March 2025',
    `Ships from ${'x'.repeat(89)}`,
    `Ships from ${'y'.repeat(90)}`,
    'Soldby nobody',
  ),
  'a label between tabs': page('<table><tr><td>Sold by</td><td>the harbour_attic</td></tr></table>'),
  'a name under a label that is none of the seller’s': lines('Brand', 'Name: Palma', 'Seller', 'Name: harbour_attic'),
  'a value of sixty characters under its label, and one more': lines(
    'Colour',
    'c'.repeat(60),
    'x',
    'Material',
    'm'.repeat(61),
    'x',
    'Model',
  ),
  'twelve parts of a row, and more': page(
    `<div id="a"><b>Colour</b> tan${'<i></i>'.repeat(10)}</div><div id="b"><h4>Model</h4><i>Palma</i>${'<i>x</i>'.repeat(9)}<p>Lining: red</p></div><div id="c"><h4>Brand</h4><i>Ondrasse</i>${'<i>x</i>'.repeat(10)}<p>Closing: zip</p></div>`,
  ),
  'hidden parts of a row': page(
    '<div><b hidden>Hidden</b><b>Colour</b><i>tan</i></div><div><b>Model</b><i hidden>none</i><i>Palma</i></div><div>Brand <b hidden>x</b><b>Ondrasse</b></div>',
  ),
  'sixty pieces of a row, and more': page(
    [56, 57, 58, 59, 60]
      .map((parts) => `<p>Row of ${parts}: <span>${many(parts, () => '<b>y</b>')}</span></p>`)
      .join(''),
  ),
  'forty lines of a cell, and more': page(
    `<p style="white-space:pre">${many(42, (at) => `Name ${at}x: value ${at}\n`)}</p>`,
  ),
  'a cell of two thousand characters, and of one more': page(
    `<div>Colour: tan<br>${'x'.repeat(1_987)}</div><div>Model: tan<br>${'y'.repeat(1_989)}</div>`,
  ),
  'three hundred rows, and more': page(`<dl>${many(301, (at) => `<dt>n${at}</dt><dd>v${at}</dd>`)}</dl>`),
  'terms without a value beside them': page(
    '<dl><dt>Colour</dt><dt>Model</dt><dd>Palma</dd></dl><table><tr><th>Brand</th><th>Material</th></tr><tr><td>Ondrasse</td><td>Calf</td></tr></table><div><dl><dt>Year</dt></dl><dd>1994</dd></div><dl><dt>Lining</dt><p>red</p></dl>',
  ),
  'links to members': page(
    '<a href="/member/anna">An</a><a href="/user/b">B</a><a href="/member/c">A</a><a href="/members/' +
      `${'d'.repeat(60)}/">${'D'.repeat(40)}</a><a href="/seller/ee?x=1">${'E'.repeat(41)}</a><a href="/profile/ff#top">Two<br>lines</a><a href="/seller/gg/items">G G</a><i href="/seller/hh">Not a link</i>`,
  ),
  'a title for sharing with the shop behind it': page(
    '',
    '<meta property="og:title" content="Ondrasse Palma Tote in tan | Attic and Arcade"><meta property="og:site_name" content="Attic and Arcade"><title>Ondrasse Palma Tote · Attic and Arcade</title>',
  ),
  'titles of a shop alone, of equal parts and of more than is kept': page(
    '',
    `<meta name="application-name" content="Attic and Arcade"><meta name="twitter:title" content="Attic and Arcade | Arcade and Attic"><title>${'t'.repeat(1_001)}</title>`,
  ),
  'a heading over several lines that is no heading of the first level':
    '<html lang="en"><head><title>Ondrasse Palma Tote</title></head><body><main><h2>Ondrasse<br>Palma   Tote</h2><p class="price">€540.00</p></main></body></html>',
  'measures beyond twenty thousand characters of a description': page(
    `<div class="description"><p>${'x '.repeat(9_985)}width 30 cm</p><p>height 21 cm</p></div>`,
  ),
  'bare measures at fifteen and at sixteen characters, and named ones among them': page(
    '<div class="description">It holds 15 cm then ab 17 cm and that is all of it, really, but for 40 cm wide.</div>',
  ),
  'one bare measure alone': page('<div class="description">It is of 33 cm, as far as I can tell, or so.</div>'),
  'bare measures where the data has one': withData(
    { ...tote, width: '30 cm', offers: { price: '540', priceCurrency: 'EUR' } },
    '<main><h1>Ondrasse Palma Tote</h1><div class="description">A bag of 25 x 19 x 15 cm, of 12 cm depth.</div></main>',
  ),
  'names of a price in each attribute': page(
    '<p id="kaufpreis">€1.01</p><p data-testid="x price">€2.02</p><p data-test="x-price">€3.03</p><p data-qa="price">€4.04</p>',
  ).replace(price, ''),
  'a name of a price that two attributes make together': page('<p class="pri" id="ce">€1.01</p>').replace(price, ''),
  'a name of a price behind four hundred characters': page(
    `<p>${prose}</p><p class="${'x'.repeat(394)} price">€1.01</p><p class="${'x'.repeat(395)} price">€2.02</p>`,
  ).replace(price, ''),
  'a label a line above the price, and two': page(
    `<p>${prose}</p><div>Price<br>€1.01<br>and more of this line, as it goes on and on</div><div>Price<br>new<br>€2.02<br>and more of this line, as it goes on and on</div><div>Your price: €3.03<br>and more of this line, as it goes on and on</div>`,
  ).replace(price, ''),
  'prices alike, the first in front': page(`<p>€1.01</p><p>€2.02</p><p>€3.03</p>`).replace(price, ''),
  'twelve elements inside a block of which the last is named': page(
    `<p>${prose}</p><div><p>Now ${'<i></i>'.repeat(10)}<i class="price">€541.00</i> or so it is</p></div><div><p>Now ${'<i></i>'.repeat(11)}<i class="price">€542.00</i> or so it is</p></div>`,
  ).replace(price, ''),
  'a split price of twenty-four characters, and of one more': page(
    `<p>${prose}</p><div class="price"><div>€</div><div>1,234.50 ${'x'.repeat(12)}</div></div><div class="price"><div>€</div><div>2,345.50 ${'x'.repeat(13)}</div></div>`,
  ).replace(price, ''),
  'struck, assistive and outside parts of one block': page(
    `<p>${prose}</p><div class="price"><s><span class="sr-only">€9.09</span></s><s>€8.08</s><s hidden>€7.07</s>€6.06<nav><s>€5.05</s><span class="sr-only">€6.06</span></nav></div>`,
  ).replace(price, ''),
  'names of a former price inside one of a price, and of eight pieces and more': page(
    `<div class="price"><i class="old">€600.00</i> <b>€540.00</b></div><div class="cost"><i class="old">€601.00</i></div><p class="old-price">${'<i></i>'.repeat(3)}€602.00</p><div class="price"><span class="was">${many(7, () => '<i> </i>')}€610.00</span> €541.00</div><div class="price"><span class="was">${many(8, () => '<i> </i>')}€611.00</span> €542.00</div>`,
  ).replace(price, ''),
  'sixty elements with a price in an attribute, and more': page(
    many(62, (at) => `<i data-price="${at + 1}.50" data-currency="EUR"></i>`),
  ).replace(price, ''),
  'an element with two prices in attributes, and two in a label': page(
    '<i data-price=" 77.00 " data-sale-price="66.00" data-currency="EUR"></i><b class="price" aria-label="€55.00, was €60.00"></b><i data-price="0" data-currency="EUR"></i><i data-price="  " data-currency="EUR"></i>',
  ).replace(price, ''),
  'places for a price, hidden, outside and of words': page(
    '<p class="price" hidden></p><nav><p class="price"></p></nav><p class="price">soon</p>',
  ).replace(price, ''),
};
