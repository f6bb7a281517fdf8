import { describe, expect, it } from 'vitest';
import { readPage } from '../../../src/listing';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import { documentOf, now, pageUrl, readHtml } from './page';

const told = async (html: string, budget = {}) => {
  const { kind, page, price, problems } = await readHtml(html, { budget });
  return {
    kind,
    page: page?.kind,
    evidence: page?.evidence,
    price: price.length,
    codes: problems.map(({ code }) => code),
  };
};
const head = (inner: string) => `<!doctype html><html lang="en"><head>${inner}</head>`;
const prose = '<p>The saleroom was full, and the hammer fell after four minutes, said those who were there.</p>'.repeat(
  8,
);
const cards = (count: number, button = '') =>
  Array.from(
    { length: count },
    (_, index) =>
      `<li><a href="/item/${index}"><img src="/t/${index}.jpg"></a><a href="/item/${index}">Bag number ${index}</a><span>£${100 + index}</span>${button}</li>`,
  ).join('');

describe('an article is no offer, whatever sums it names', () => {
  it('a sum in the heading', async () => {
    const page = `${head('<title>A bag for £17,000</title><meta property="og:type" content="article"><meta property="article:published_time" content="2026-02-01">')}
      <body><article><h1>A bag for £17,000</h1>${prose}<p>£17,000</p><button>Subscribe now</button></article></body></html>`;
    expect(await told(page)).toEqual({
      kind: 'article',
      page: 'article',
      evidence: ['price-alone', 'head-says-article', 'publication-time'],
      price: 0,
      codes: ['page-is-an-article'],
    });
  });

  it('a review whose data names the product without an offer', async () => {
    const data = {
      '@type': 'NewsArticle',
      headline: 'The Carryall, ten years on',
      about: { '@type': 'Product', name: 'Carryall 30' },
    };
    const page = `${head(`<title>The Carryall, ten years on</title><script type="application/ld+json">${JSON.stringify(data)}</script>`)}
      <body><article><h1>The Carryall, ten years on</h1>${prose}<p class="price">£540</p></article></body></html>`;
    expect(await told(page)).toMatchObject({ kind: 'article', page: 'article' });
  });

  it("a shop's page that calls itself an article still offers what its data offers", async () => {
    const data = {
      '@type': 'Product',
      name: 'Carryall 30',
      offers: { '@type': 'Offer', price: '540', priceCurrency: 'GBP' },
    };
    const page = `${head(`<title>Carryall 30</title><meta property="og:type" content="article"><script type="application/ld+json">${JSON.stringify(data)}</script>`)}
      <body><h1>Carryall 30</h1><p>£540</p></body></html>`;
    expect(await told(page)).toMatchObject({ kind: 'listing', page: 'offer' });
  });
});

describe('a page that its builder calls an article', () => {
  const page = (meta: string, price: string) =>
    told(`${head(`<title>Music satchel</title><meta property="og:type" content="article">${meta}`)}
      <body><article><h1>Music satchel</h1><p><img src="/p/1.jpg" width="900" height="700"></p>${price}<p>Given to our autumn fair, with a brass lock.</p></article></body></html>`);
  const price = '<p class="price">£28.00</p>';
  it('offers what has its price right under the heading, and was not published as a text', async () => {
    expect(await page('', price)).toMatchObject({ kind: 'listing', page: 'offer' });
  });
  it('is one where it has the time of a text, or no price of its own', async () => {
    const published = '<meta property="article:published_time" content="2026-02-01">';
    expect(await page(published, price)).toMatchObject({ page: 'article' });
    expect(await page('', '<p>Last year it brought £28.00, said the vicar.</p>')).toMatchObject({ page: 'article' });
  });
});

describe('what stands beside an offer makes no list of it', () => {
  const shop = (count: number) =>
    `<main><h1>Ondrasse Carryall 30</h1><form class="buy"><button>Add to basket</button></form>
     <section><ul>${cards(count)}</ul></section></main>`;

  it('a carousel of twelve others, and a price that only a picture shows', async () => {
    expect(await told(shop(12))).toMatchObject({
      kind: 'listing',
      evidence: ['buying-control', 'many-cards-with-prices'],
    });
  });

  it('a list stays one although each of its cards has a button', async () => {
    const page = `<main><h1>Bags</h1><ul>${cards(12, '<button>Add to basket</button>')}</ul></main>`;
    expect(await told(page)).toMatchObject({ kind: 'list', codes: ['page-is-a-list'] });
  });
});

describe('a page that was not read whole is not judged as if it had been', () => {
  it('is neither a list nor nothing', async () => {
    const list = `<main><h1>Bags</h1><ul>${cards(40)}</ul>${'<p>word</p>'.repeat(300)}</main>`;
    expect(await told(list)).toMatchObject({ kind: 'list' });
    expect(await told(list, { nodes: 500 })).toEqual({
      kind: 'cut',
      page: 'cut',
      evidence: ['many-cards-with-prices'],
      price: 0,
      codes: ['page-too-large-to-tell', 'page-cut'],
    });
    expect(await told('<p><b>word</b></p>'.repeat(500), { nodes: 100 })).toMatchObject({ kind: 'cut' });
  });

  it('is an offer where what was read says so', async () => {
    const offer = `<h1>Ondrasse Carryall 30</h1><p class="price">€540.00</p><button>Buy now</button>${'<p>word</p>'.repeat(500)}`;
    expect(await told(offer, { nodes: 100 })).toMatchObject({ kind: 'listing', page: 'offer', codes: ['page-cut'] });
  });
});

it('what a field holds never leaves the page; what a button says does', async () => {
  const fields =
    '<input type="hidden" value="session-262"><input value="my name"><input type="submit" value="Place bid">';
  const page = documentOf(`<h1>Carryall</h1><form>${fields}</form>`);
  const { signs } = await readPage(page, { url: pageUrl, now, look: lookBySource(page) });
  expect(signs.controls).toEqual(['Place bid']);
});

it('what a button still sells is offered where nothing else says so', async () => {
  const read = async (html: string) =>
    (await readHtml(`<h1>Carryall</h1><p>£540</p>${html}`)).availability.map(({ value, where }) => `${value} ${where}`);
  expect(await read('<form><input type="submit" value="Add to basket"></form>')).toEqual(['offered button']);
  expect(await read('<p>Sold</p><form><input type="submit" value="Add to basket"></form>')).toEqual(['sold text']);
});
