import { describe, expect, it } from 'vitest';
import { readHtml } from './page';

const page = (body: string, language = 'en', head = '') =>
  readHtml(
    `<html lang="${language}"><head><title>Ondrasse Palma Tote</title>${head}</head><body>${body}</body></html>`,
  );
const heading = '<h1>Ondrasse Palma Tote</h1>';
const shown = async (body: string, language?: string, head?: string) =>
  (await page(body, language, head)).price.map(
    ({ value: { kind, minor, exponent, currency } }) => `${kind} ${currency ?? '?'} ${minor / 10 ** exponent}`,
  );
const best = async (body: string, language?: string, head?: string) => (await shown(body, language, head))[0];

describe('rules of a page that do not hold on a desk’s screen', () => {
  const offer = `<div class="offer">${heading}<p class="price">€540.00</p></div>`;
  it.each([
    '@media print{.offer{display:none}}',
    '@media only screen and (max-width:600px){.offer{display:none}}',
    '@media (min-width:100em){.offer{display:none}}',
    '@media (prefers-reduced-motion:reduce){.offer{opacity:0}}',
    '@keyframes come{.offer{opacity:0}to{opacity:1}}',
    '.offer{backface-visibility:hidden}',
    '.offer{-webkit-backface-visibility: hidden;}',
  ])('hide nothing: %s', async (rule) => {
    expect(await best(offer, 'en', `<style>p{margin:0}${rule}b{color:red}</style>`)).toBe('sale EUR 540');
  });

  it.each([
    '@media screen{.gone{display:none}}',
    '@media (min-width:600px),print{.gone{display:none}}',
    '@supports (display:grid){.gone{visibility:hidden}}',
    '@import url("a.css");.gone{opacity:0}',
    '@media print{p{color:red}}.gone{display:none}',
  ])('those that hold do: %s', async (rule) => {
    const { text } = await page(`${offer}<p class="gone">Not seen.</p>`, 'en', `<style>${rule}</style>`);
    expect(text).not.toContain('Not seen');
  });
});

describe('signs that count only in an element that is named as the price', () => {
  it.each([
    ['44 890 тг.', 'ru', 'sale KZT 44890'],
    ["Fr. 1'290.00", 'de-CH', 'sale CHF 1290'],
    ['Fr. 1 290.00', 'de-CH', 'sale CHF 1290'],
    ['25,50 KM', 'hr', 'sale BAM 25.5'],
    ['1.299 din.', 'sr', 'sale RSD 1299'],
    ['1.299,50 tlr', 'de', 'sale ? 1299.5'],
  ])('%s', async (words, language, wanted) => {
    expect(await best(`<main>${heading}<div class="price">${words}</div></main>`, language)).toBe(wanted);
  });

  it('elsewhere they are words', async () => {
    expect(await shown(`<main>${heading}<p>Lock 1 299 din and 25,50 KM of thread.</p></main>`)).toEqual([]);
  });
});

describe('amounts that stand beside the price', () => {
  it('a count of bids is none of its digits', async () => {
    const box = '<div class="status"><span class="price">$200</span><span><span>2<!-- --> bids</span></span></div>';
    expect(await best(`<main>${heading}${box}</main>`)).toBe('sale ? 200');
    expect(await best(`<main>${heading}<p class="price"><b>$200</b><sup>99</sup></p></main>`)).toBe('sale ? 200.99');
  });

  it.each([
    ['en', '<p class="price">Excl. VAT: €80.00</p><p class="price">€96.80</p>', 96.8],
    ['de', '<p class="price">80,00 € zzgl. MwSt.</p><p class="price">95,20 €</p>', 95.2],
    ['fr', '<p class="price">80,00 € HT</p><p class="price">96,00 €</p>', 96],
    ['it', '<p class="price">80,00 € + IVA</p><p class="price">97,60 €</p>', 97.6],
    ['es', '<p class="price">80,00 € sin IVA</p><p class="price">96,80 €</p>', 96.8],
    ['nl', '<p class="price">€ 80,00 excl. btw</p><p class="price">€ 96,80</p>', 96.8],
    ['ja', '<p class="price">8,000円（税抜）</p><p class="price">8,800円</p>', 8800],
  ])('a sum to which the tax is added still comes behind the one with it (%s)', async (language, body, wanted) => {
    expect(await best(`<main>${heading}${body}</main>`, language)).toMatch(new RegExp(`^sale ... ${wanted}$`));
  });

  it('alone it is the price, and says so', async () => {
    const { price } = await page(`<main>${heading}<p class="price">€80.00 excl. VAT</p></main>`);
    expect(price.map(({ value, caveats }) => [value.kind, value.minor, caveats])).toEqual([['sale', 8000, ['net']]]);
  });

  it.each([
    ['it', 'GBP 12,99', 'Circa EUR 14,43'],
    ['en', '£12.99', 'Approximately EUR 14.43'],
    ['de', 'GBP 12,99', '(ca. EUR 14,43)'],
  ])(
    'a sum that is about right in another currency comes behind the one it is worked out of (%s)',
    async (language, own, about) => {
      const body = `<main>${heading}<div>${own}</div><div class="price">${about}</div></main>`;
      const { price } = await page(body, language);
      expect(price.map(({ value }) => [value.currency, value.minor])).toEqual([
        ['GBP', 1299],
        ['EUR', 1443],
      ]);
      expect(price[1]?.caveats).toContain('converted');
    },
  );

  it('a price that a seller gives roughly, in the only currency, stays', async () => {
    expect(await best(`<main>${heading}<p>Price: ca. €540</p></main>`)).toBe('sale EUR 540');
  });
});

describe('an element that is named as the former price', () => {
  it('is it beside another one, in one word as well', async () => {
    const body = `<main>${heading}<div class="box-price"><span class="box-pricenow">€270.00</span><br><span class="box-priceold">€540.00</span></div></main>`;
    expect(await shown(body)).toEqual(['sale EUR 270', 'was EUR 540']);
  });

  it('is the price where no other stands but the one without tax', async () => {
    const tax = '<li class="price-tax">Without: <span class="price-tax-live">€36.53</span></li>';
    const body = `<main>${heading}<ul><li class="price"><span class="price-old">€40.00</span></li>${tax}</ul></main>`;
    expect(await best(body)).toBe('sale EUR 40');
  });
});

describe('the page around the price', () => {
  const card = (name: string, sum: string) =>
    `<li><a href="/item/${sum}"><img src="/${sum}.jpg"><h2>${name}</h2><p>€${sum}.00</p></a></li>`;
  const cards = `<ul>${['Carryall', 'Satchel', 'Bucket', 'Pouch', 'Clutch'].map((name, at) => card(name, `6${at}1`)).join('')}</ul>`;

  it('is an offer where a few others stand beside a price under the heading', async () => {
    const { kind, price } = await page(`${heading}<p class="price">€540.00</p>${cards}`);
    expect([kind, price[0]?.value.minor]).toEqual(['listing', 54000]);
  });

  it('is a list where only a filter has its range there', async () => {
    const { kind } = await page(`<h1>Bags</h1><p class="price-filter">€100.00 – €900.00</p>${cards}`);
    expect(kind).toBe('list');
  });

  it('has its own name, not that of a card that is a link', async () => {
    const own = '<h2>Ondrasse Palma Tote</h2><p class="price">€540.00</p>';
    const other = '<div><a href="/item/7"><h1>Ondrasse Satchel</h1><p class="price">€990.00</p></a></div>';
    const { title } = await page(`${other}${own}`);
    expect(title.find(({ where }) => where.includes('h'))?.where).toBe('html > body > h2');
  });

  it('offers the piece where one size of it is gone and another is there', async () => {
    const offer = (availability: string, sku: string) =>
      `{"@type":"Offer","price":"540.00","priceCurrency":"EUR","availability":"https://schema.org/${availability}","sku":"${sku}"}`;
    const data = (state: string, sku: string) =>
      `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Palma Tote","sku":"${sku}","offers":[${offer(state, sku)}]}</script>`;
    const both = await page(
      `${data('OutOfStock', 's')}${data('InStock', 'm')}<main>${heading}<p class="price">€540.00</p></main>`,
    );
    expect(both.availability[0]?.value).toBe('offered');
    const none = await page(
      `${data('OutOfStock', 's')}${data('SoldOut', 'm')}<main>${heading}<p class="price">€540.00</p></main>`,
    );
    expect(none.availability[0]?.value).toBe('sold');
  });
});

describe('what is no price, or not the one that is asked', () => {
  it('a number without a sign far from every word for a price', async () => {
    expect(
      await shown(`<main>${heading}<div class="title-row"><span>101693</span></div><p>A tote.</p></main>`),
    ).toEqual([]);
    expect(await best(`<main>${heading}<p>Price: 540</p></main>`)).toBe('sale ? 540');
  });

  const data = (offers: string) =>
    `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Palma Tote","offers":[${offers}]}</script>`;
  const offer = (price: string, more = '') => `{"@type":"Offer","price":"${price}","priceCurrency":"EUR"${more}}`;
  const box = '<div class="pricing"><div class="price">€ 590,00</div><div class="price">€ 540,00</div></div>';

  it('the higher of two sums that the data gives and one box shows', async () => {
    expect(
      (await shown(`${data(`${offer('590.00')},${offer('540.00')}`)}<main>${heading}${box}</main>`, 'it'))[0],
    ).toBe('sale EUR 540');
  });

  it('not where the two stand apart', async () => {
    const prose = '<p>Words of the house that stand beside a sum and tell of it.</p>'.repeat(2);
    const apart = `<div class="a">${prose}<p class="price">€ 590,00</p></div><div class="b">${prose}<p class="price">€ 540,00</p></div>`;
    expect(
      (await shown(`${data(`${offer('590.00')},${offer('540.00')}`)}<main>${heading}${apart}</main>`, 'it'))[0],
    ).toBe('sale EUR 590');
  });

  it('a page whose button says what is bought and for how much is no list', async () => {
    const cards = Array.from(
      { length: 9 },
      (_, at) => `<li><a href="/item/${at}"><img src="/${at}.jpg"><h2>Piece ${at}</h2><p>€4${at}.00</p></a></li>`,
    ).join('');
    const body = (button: string) =>
      `${heading}<p class="price">€540.00</p><button>${button}</button><ul>${cards}</ul>`;
    expect((await page(body('Buy tote in tan €540.00'))).kind).toBe('listing');
    expect((await page(body('See tote in tan €540.00'))).kind).toBe('list');
  });

  it('a row of another seller that is sold out does not end the offer', async () => {
    const row = (seller: string, status: string, sum: string) =>
      `<tr><td>${seller}</td><td>${status}</td><td class="price">${sum}<div>Offers</div><button>${status}</button></td></tr>`;
    const body = `<main>${heading}<p class="price">€540.00</p><button>Add to basket</button><table>${row('Attic & Arcade', 'In Stock', '€540.00')}${row('Another house', 'Out of Stock', '€690.00')}</table></main>`;
    expect((await page(body)).availability[0]?.value).toBe('offered');
    expect(
      (await page(`<main>${heading}<p class="price">€540.00</p><p>Out of Stock</p></main>`)).availability[0]?.value,
    ).toBe('sold');
  });
});
