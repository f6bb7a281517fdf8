import type { TechniquePage } from '../reading';

/** Enough words that a price's block is not the whole page. */
export const prose =
  'Smooth calf leather with brass fittings, a flat handle, one pocket inside and feet under its base.';
const page = (inside: string): string =>
  `<html lang="en"><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p>${inside}</main></body></html>`;
const rows = (count: number): string =>
  Array.from({ length: count }, (_, at) => `<p>row ${'abcdefghij'[at % 10]}</p>`).join('');

/** How a page shows its price, and the amounts that are none. */
export const prices: Record<string, TechniquePage> = {
  'a price under each name of its field': page(
    ['price', 'prix', 'preis', 'prezzo', 'precio', 'prijs', 'amount', 'kaufpreis', 'betrag', 'kakaku', '価格']
      .map((name, at) => `<div><p><span class="${name}">€${at + 1}00.00</span></p><p>and ${'x'.repeat(90)}</p></div>`)
      .join(''),
  ),
  'names in the other attributes': page(
    '<p id="price">€1.01</p><p data-testid="price">€2.02</p><p data-test="price">€3.03</p><p itemprop="price">€4.04</p><p data-qa="price">€5.05</p><p data-other="price">€6.06</p>',
  ),
  'amounts beside the price': page(
    '<p class="price">€540.00</p><p class="shipping">€7.00</p><p class="price-delivery">€8.00</p><p class="unit-price">€9.00</p><p class="savings-price">Save €60.00</p><p class="tax">€99.00</p>',
  ),
  'a former price struck through': page('<p class="price"><del>€600.00</del> €540.00</p>'),
  'a former price by its name alone': page(
    '<div class="price"><span class="old-price">€600.00</span><span>€540.00</span></div><div><span class="was">€77.00</span></div><div class="price"><span class="alt">€601.00</span></div>',
  ),
  'a range, a from and a unit': page(
    '<p class="price">€100.00 – €300.00</p><p class="price">from €90.00</p><p class="price">€5.00 / kg</p>',
  ),
  'raised cents': page('<p class="price">€540<sup>50</sup></p>'),
  'cents on their own lines': page(
    '<p class="price"><span style="display:block">€</span><span style="display:block">540</span></p>',
  ),
  'split digits with a copy for screen readers': page(
    '<p class="price"><span class="sr-only">€540.00</span><span aria-hidden="true">€<b>540</b>00</span></p>',
  ),
  'a copy for screen readers of another amount': page(
    '<p class="price"><span class="sr-only">€1.00</span><span>€540.00</span></p>',
  ),
  'a copy where nothing is shown': page('<p class="price"><span class="visually-hidden">€540.00</span></p>'),
  'no sign of a currency': page(
    '<p class="price">540</p><p>541</p><p>542 in a line that is long enough to be no price</p>',
  ),
  zero: page('<p class="price">€0.00</p>'),
  'a labelled price': page('<p>Price: €540.00</p><p>Buy it now<br>€530.00</p><p>Something else €520.00</p>'),
  'a price within a long line': page(
    `<p>This one was sold to us for €540.00 by somebody whom we never met again, as it happens</p><p>A shorter line with €530.00 in it, it ends</p>`,
  ),
  'besides at the limit': page(
    `<p>€540.00 ${'a'.repeat(29)}</p><p>€541.00 ${'a'.repeat(30)}</p><p>€542.00 ${'a'.repeat(31)}</p>`,
  ),
  'lines at the limit of sixty': page(`<p>€540.00 ${'a'.repeat(52)}</p><p>€541.00 ${'a'.repeat(53)}</p>`),
  'far from the heading': page(`${rows(25)}<p>€540.00</p>${rows(100)}<p>€541.00</p>${rows(30)}<p>€542.00</p>`),
  'no heading at all': '<html lang="en"><body><p class="price">€540.00</p><p>€541.00</p></body></html>',
  'a price in the heading': '<html lang="en"><body><main><h1>Ondrasse Palma Tote €540.00</h1></main></body></html>',
  'a name three levels up': page(
    '<div class="price"><div><b>€540.00</b></div></div><div class="price"><div><div><div><b>€541.00</b><i>y</i></div><p>x</p></div></div></div>',
  ),
  'other names above': page(
    '<div class="delivery"><p><b>€540.00</b></p></div><div class="delivery">€541.00</div><div class="shipping price"><b>€542.00</b></div>',
  ),
  'a name inside the block': page(
    '<p>Now <i class="price">€540.00</i></p><p>Now <i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i class="price">€541.00</i></p><p>Now <i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i></i><i class="price">€542.00</i></p>',
  ),
  'a price in a label for screen readers': page(
    '<div class="price" aria-label="€540.00"></div><div class="cost" aria-label="€541.00"></div>',
  ),
  'prices in attributes': page(
    '<i data-price="540.00" data-currency="EUR"></i><i data-product-price="541" data-price-currency="USD"></i><i data-price-amount="1.299" data-currency-code="EUR"></i><i data-amount="54300" data-currency="EUR"></i><i data-sale-price="54400" data-currency="JPY"></i><i data-price=""></i><i data-price="none"></i><i data-price="55" hidden></i><footer><i data-price="56"></i></footer>',
  ),
  'coins that are seen elsewhere': page(
    '<p class="price">€540.00</p><i data-price="54000" data-currency="EUR"></i><i data-price="540" data-currency="EUR"></i><i data-price="99" data-currency="EUR"></i><i data-price="100" data-currency="EUR"></i><i data-price="100" data-currency="EUR"></i>',
  ),
  'a price that is a picture': page('<p class="price"><img src="/p.png"></p>'),
  'a price made by style': page('<p class="the price-tag"></p><p class="my_price "> </p>'),
  'an empty place for a price, but named otherwise or too large': page(
    '<p class="pricey"></p><p class="price"><b></b><b></b><b></b><b></b></p>',
  ),
  'an empty place of four elements': page('<p class="price"><b></b><b></b><b></b></p>'),
  'a currency that the data agrees on': `<html lang="en"><head><meta property="product:price:currency" content="cad"></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">$540.00</p></main></body></html>`,
  'currencies that the data does not agree on': `<html lang="en"><head><meta property="og:price:currency" content="AUD"><script type="application/ld+json">{"@type":"Product","offers":{"priceCurrency":"CAD"}}</script></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">$540.00</p></main></body></html>`,
  'a currency of no code': `<html lang="en"><head><meta property="og:price:currency" content="dollars"></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">$540.00</p></main></body></html>`,
  'nine prices': page(Array.from({ length: 9 }, (_, at) => `<div class="price">€${at + 1}.00</div>`).join('')),
  'a block of ninety characters, and one more': page(
    `<div>${'b'.repeat(82)} <p>€540.00</p></div><div>${'b'.repeat(83)} <p>€541.00</p></div>`,
  ),
  'nested deeper than five levels': page(
    '<div>a<div>b<div>c<div>d<div>e<div>f<b>€540.00</b></div></div></div></div></div></div>',
  ),
  'the page and the data say two prices': `<html lang="en"><head><script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","offers":{"price":600,"priceCurrency":"EUR"}}</script></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price">€540.00</p></main></body></html>`,
  'the data says the price struck through': `<html lang="en"><head><script type="application/ld+json">{"@type":"Product","name":"Ondrasse Palma Tote","offers":{"price":600,"priceCurrency":"EUR"}}</script></head><body><main><h1>Ondrasse Palma Tote</h1><p>${prose}</p><p class="price"><s>€600.00</s> €540.00</p></main></body></html>`,
  'a sold piece keeps its last price': page('<p>Sold</p><p class="price">€540.00</p>'),
};
