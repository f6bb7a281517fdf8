import type { TechniquePage } from '../reading';
import { prose } from './prices';

const page = (inside: string, head = '', heading = '<h1>Ondrasse Palma Tote</h1>'): string =>
  `<html lang="en"><head>${head}</head><body><main>${heading}<p>${prose}</p>${inside}</main></body></html>`;
const ld = (value: unknown): string => `<script type="application/ld+json">${JSON.stringify(value)}</script>`;
const card = (at: number, price = true): string =>
  `<li><a href="/item/${at}"><img src="/t/${at}.jpg">Satchel ${at}${price ? ` €${at}0.00` : ''}</a></li>`;
const cards = (count: number, price = true): string =>
  `<ul>${Array.from({ length: count }, (_, at) => card(at + 1, price)).join('')}</ul>`;
const auction = (...lines: string[]): string => page(lines.map((line) => `<p>${line}</p>`).join(''));
const type = (name: string): string => `<meta property="og:type" content="${name}">`;

/** What kind of page it is, what of it is the listing's own, and auctions. */
export const kinds: Record<string, TechniquePage> = {
  'an article by its head and its time': page(
    '<p class="price">€540.00</p>',
    `${type('article')}<meta property="article:published_time" content="2026-01-01">`,
  ),
  'an article by its data': page('', ld({ '@type': 'NewsArticle', headline: 'Totes' })),
  'each type of article': page(
    '',
    ld(
      [
        'Article',
        'BlogPosting',
        'Report',
        'ReportageNewsArticle',
        'TechArticle',
        'OpinionNewsArticle',
        'LiveBlogPosting',
        'ClaimReview',
        'Recipe',
      ].map((name) => ({ '@type': 'WebPage', mainEntity: { '@type': name } })),
    ),
  ),
  'an article inside a product’s review': page(
    '<p class="price">€540.00</p>',
    ld({ '@type': 'Product', name: 'Ondrasse Palma Tote', review: { '@type': 'Article' }, offers: { price: 1 } }),
  ),
  'a blog that sells': page(
    '<button>Add to cart</button><form action="/cart/add"></form><p class="price">€540.00</p>',
    `${type('blog')}${type('product')}`,
  ),
  'a product by its head': page('', type('og:product')),
  'a list of eight cards': page(cards(8)),
  'a list of four cards': page(cards(4)),
  'three cards are no list': page(cards(3)),
  'two cards': page(cards(2)),
  'cards without prices': page(cards(5, false)),
  'cards beside a button to buy': page(`<p class="price">€540.00</p><button>Buy now</button>${cards(5)}`),
  'many cards beside a button, on a page that calls itself a list': page(
    `<button>Add to cart</button>${cards(8)}`,
    ld({ '@type': 'CollectionPage' }),
    '<h1>Bags</h1>',
  ),
  'a collection, a search, a catalogue': page(
    '',
    ld([{ '@type': 'CollectionPage' }, { '@type': 'SearchResultsPage' }, { '@type': 'OfferCatalog' }]),
  ),
  'products of which none is this page': page(
    '',
    ld(
      [1, 2, 3].map((at) => ({
        '@type': 'ListItem',
        item: { '@type': 'ItemList', itemListElement: { '@type': 'Product', name: `Satchel ${at}` } },
      })),
    ),
    '<h1>Bags</h1>',
  ),
  'cards under each other in several parents': page(
    `<div>${card(1)}${card(2)}</div><div>${card(3)}${card(4)}</div>`.replaceAll('li>', 'p>'),
  ),
  'cards whose link is deep inside': page(
    Array.from(
      { length: 4 },
      (_, at) =>
        `<article><div><div><div><a href="/item/${at}">Bag ${at}</a></div></div></div><p>€${at}5.00</p></article>`,
    ).join(''),
  ),
  'cards whose link is seven levels inside': page(
    Array.from(
      { length: 4 },
      (_, at) =>
        `<article><div><div><div><div><div><div><a href="/item/${at}">Bag ${at}</a></div></div></div></div></div></div><p>€${at}5.00</p></article>`,
    ).join(''),
  ),
  'cards that lead here, to pictures or to parts of the page': page(
    `<ul>${['#a', '/item/1042', '/p/a.jpg', '/p/b.png?x', 'mailto:a@b.example', '/item/1042?utm_source=x'].map((href) => `<li><a href="${href}">Bag €5.00</a></li>`).join('')}</ul>`,
  ),
  'cards with each sign of money': page(
    `<ul>${['$5', '5 €', '£5', '¥5', '₹5', '5 EUR', 'USD 5', '5 kr', '5 zł', '5円', 'nothing', 'EUROPE 5'].map((text, at) => `<li><a href="/item/${at}">${text}</a></li>`).join('')}</ul>`,
  ),
  'nothing at all': '<html><body></body></html>',
  'a heading and nothing else': '<html lang="en"><body><h1>Ondrasse Palma Tote</h1></body></html>',
  'controls of every make': page(
    '<button>Buy now</button><input type="submit" value="Place bid"><input type="image" aria-label="Add to bag"><input type="text" value="no"><a class="btn" href="#">Contact seller</a><a href="#" id="add-to-cart">Cart</a><a href="#">plain</a><div role="button">Pay</div><button hidden>Hidden</button><button aria-label="Named"></button><button>Buy now</button><button>' +
      'w'.repeat(60) +
      '</button><button>' +
      'w'.repeat(61) +
      '</button><footer><button>Foot</button></footer><form name="product-form"></form>',
  ),
  'a form named for selling': page('<form action="/basket-add"></form>'),
  'a link named for a bid': page('<a data-testid="place_bid">x</a>'),
  'a control named in data-action': page('<button data-action="buy-now">x</button>'),
  'navigation, footers and notices are outside': page(
    '<nav>nav words</nav><footer>foot words</footer><div role="navigation">role words</div><div role="contentinfo">info</div><div role="search">find</div><div role="dialog">ask</div><div role="alertdialog">warn</div><div role="banner">ban</div><div role="main">stays</div><div class="cookie-banner">cookies</div><div id="related-items">rel</div><div class="breadcrumbs">crumbs</div>',
  ),
  'headers of the page and of its parts': `<html lang="en"><body><header>site head</header><article><header>part head</header></article><section><header>section head</header></section><main><header>main head</header><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></main></body></html>`,
  'a heading inside what is outside': `<html lang="en"><head><title>Ondrasse Palma Tote</title></head><body><div class="related"><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p></div><div class="sidebar related"><p>others</p></div></body></html>`,
  'the heading that the titles name':
    '<html lang="en"><head><title>Palma Tote of Ondrasse</title><meta property="og:title" content="Ondrasse Palma Tote"></head><body><h1>Attic &amp; Arcade</h1><main><h2>Ondrasse Palma Tote</h2><h3>No third level</h3><p class="price">€540.00</p></main></body></html>',
  'headings by role':
    '<html lang="en"><head><title>Ondrasse Palma Tote</title></head><body><div role="heading">Ondrasse Palma Tote</div><div role="heading" aria-level="3">Ondrasse Palma Tote three</div><div role="heading" aria-level="1">Ondrasse</div><p class="price">€540.00</p></body></html>',
  'headings too short, too long, hidden or related': `<html lang="en"><head><title>Ondrasse Palma Tote</title></head><body><h1>Ab</h1><h1>${'long '.repeat(81)}</h1><h1 hidden>Ondrasse Palma Tote</h1><h1>Related items</h1><h2>Palma bag</h2><p class="price">€540.00</p></body></html>`,
  'a title in Japanese':
    '<html lang="ja"><head><title>革のバッグ 茶色</title></head><body><h2>革のバッグ</h2><h1>店</h1><p class="price">¥5,400</p></body></html>',
  'what follows a related heading': page(
    `<p class="price">€540.00</p><h2>You may also like</h2><p>other one €5.00</p><h3>Smaller</h3><p>other two €6.00</p><h2>Delivery</h2><p>own words</p>`,
  ),
  'a section that a related heading opens': page(
    `<p class="price">€540.00</p><section><h3>Similar items</h3><p>other one €5.00</p></section><section><p>${'Own words before it. '.repeat(3)}</p><h3>Recommended</h3><p>other two €6.00</p></section><div role="heading">Sponsored</div><p>other three</p>`,
  ),
  'a related heading of eighty characters, and one more': page(
    `<div><h3>Related ${'x'.repeat(72)}</h3><p>gone</p></div><div><h3>Related ${'x'.repeat(73)}</h3><p>stays</p></div>`,
  ),
  'related without a heading of the piece':
    '<html lang="en"><body><div><div><h3>Related</h3></div><p>one</p></div><p class="price">€540.00</p></body></html>',
  'an auction with its bid': auction(
    'Current bid: €540.00',
    'Starting price: €100.00',
    'Estimate: €600.00',
    'Buy it now: €900.00',
    '12 bids',
    'Ends: 3 March 2026',
  ),
  'an auction without a bid': auction('Starting bid', '€100.00', '0 bids', 'Next bid: €110.00'),
  'an auction whose amounts stand below their labels': auction(
    'Current bid',
    '-',
    '€540.00',
    'Starting price',
    'x',
    'y',
    'z',
    '€100.00',
    'Your bid',
    '€541.00',
  ),
  'an auction with its label behind': auction('€540.00 current bid', '€100.00 starting price'),
  'a current bid alone is no auction': auction('Current bid: €540.00'),
  'a bid and a price to buy at once': auction('Current bid: €540.00', 'Buy now: €900.00'),
  'a start of the same amount as the bid': auction('Current bid: €540.00', 'Starting price: €540.00'),
  'an auction that ended, and when in the line below': auction(
    'Winning bid: €540.00',
    '3 bids',
    'Auction ended',
    '2 February 2026',
    'Ended: 1 February 2026',
  ),
  'an auction whose data names the start': page(
    '<p>Starting price: €100.00</p><p>No bids yet</p>',
    ld({ '@type': 'Product', name: 'Ondrasse Palma Tote', offers: { price: 100, priceCurrency: 'EUR' } }),
  ),
  'a line too long for a label': auction(`Current bid: €540.00 ${'x'.repeat(101)}`, '2 bids'),
  'data cut off': { html: page('<p class="price">€540.00</p>'), budget: { nodes: 12 } },
  'a page cut off before it tells': {
    html: `<html><body>${'<p>x</p>'.repeat(20)}<h1>Ondrasse Palma Tote</h1></body></html>`,
    budget: { nodes: 12 },
  },
  'attributes beyond the budget': {
    html: page('<img src="/p/a.jpg" data-src="/p/b.jpg" data-zoom="/p/c.jpg">'),
    budget: { attributes: 2 },
  },
  'characters beyond the budget': { html: page('<p class="price">€540.00</p>'), budget: { characters: 60 } },
  'levels beyond the budget': {
    html: page('<div><div><div><div><p>deep</p></div></div></div></div>'),
    budget: { depth: 6 },
  },
  'still loading': { html: page('<p class="price">€540.00</p>'), stillLoading: true },
};
