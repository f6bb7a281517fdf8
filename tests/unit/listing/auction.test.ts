import { describe, expect, it } from 'vitest';
import { readHtml } from './page';

const told = async (body: string, lang = 'en-GB', data = {}) => {
  const script = `<script type="application/ld+json">${JSON.stringify(data)}</script>`;
  const html = `<!doctype html><html lang="${lang}"><head><title>Lantern 24</title>${script}</head><body><main><h1>Lantern 24</h1>${body}</main></body></html>`;
  const { price, page, ends, availability } = await readHtml(html);
  return {
    kind: page?.kind,
    best: price[0] && `${price[0].value.kind} ${price[0].value.minor}`,
    all: [...new Set(price.map(({ value }) => `${value.kind} ${value.minor}`))].sort(),
    ends: ends?.[0]?.value.from ?? null,
    availability: availability[0]?.value ?? null,
  };
};

describe('the current bid is the price of an auction', () => {
  it('beside its start, next bid, price to buy at once, estimate and end', async () => {
    const body = `<p>Starting bid: £90.00</p><p>Current bid</p><p>£210.00</p><p>[ 12 bids ]</p><p>Reserve not met</p>
      <p>Next bid £220.00</p><p>Buy it now: £400.00</p><p>Estimate £300 – £450</p><p>Ends: 12 March 2026, 19:30</p>`;
    expect(await told(body)).toEqual({
      kind: 'auction',
      best: 'sale 21000',
      all: ['buy-now 40000', 'estimate 30000', 'next-bid 22000', 'sale 21000', 'start 9000'],
      ends: '2026-03-12',
      availability: 'offered',
    });
  });

  it('where the data still has the start as its price', async () => {
    const data = {
      '@type': 'Product',
      name: 'Lantern 24',
      offers: { '@type': 'Offer', price: '100', priceCurrency: 'EUR' },
    };
    const body = '<dl><dt>Mise à prix</dt><dd>100 €</dd><dt>Enchère actuelle</dt><dd>260 €</dd></dl><p>9 enchères</p>';
    expect(await told(body, 'fr', data)).toMatchObject({
      kind: 'auction',
      best: 'sale 26000',
      all: ['sale 26000', 'start 10000'],
    });
  });

  it.each([
    ['de', '<p>Startpreis: 1,00 €</p><p>Aktuelles Gebot: 187,00 €</p><p>23 Gebote</p>'],
    ['it', "<p>Base d'asta: 1,00 €</p><p>Offerta attuale: 187,00 €</p><p>23 offerte</p>"],
    ['es', '<p>Precio de salida: 1,00 €</p><p>Puja actual: 187,00 €</p><p>23 pujas</p>'],
    ['nl', '<p>Startprijs: € 1,00</p><p>Hoogste bod: € 187,00</p><p>23 biedingen</p>'],
    ['ja', '<p>開始価格 100円</p><p>現在価格 18,700円</p><p>入札件数: 23</p>'],
  ])('in %s', async (lang, body) => {
    expect(await told(body, lang)).toMatchObject({ kind: 'auction', best: 'sale 18700' });
  });

  it('is open as long as nobody has bid: the start is no price', async () => {
    const body = '<p>Starting bid: £115.00</p><p>[ 0 bids ]</p><p>Postage £27.02</p><p>Import charges £0.00</p>';
    expect(await told(body)).toMatchObject({ kind: 'auction', best: 'start 11500' });
  });

  it('stays what it was when bidding has ended', async () => {
    const body =
      '<p>Bidding has ended on this item.</p><p>Winning bid: £5,100.00</p><p>[ 47 bids ]</p><p>Ended: 28 November 2025</p>';
    expect(await told(body)).toMatchObject({
      kind: 'ended',
      best: 'sale 510000',
      ends: '2025-11-28',
      availability: 'sold',
    });
  });
});

describe('what is gone is the piece, not a size of it', () => {
  const product = (offers: object[]) => ({ '@type': 'Product', name: 'Lantern 24', offers });
  const offer = (availability: string) => ({ '@type': 'Offer', price: '540', priceCurrency: 'GBP', availability });

  it('one offer of several sold out', async () => {
    expect(await told('<p>£540</p>', 'en', product([offer('OutOfStock'), offer('InStock')]))).toMatchObject({
      kind: 'offer',
      availability: 'offered',
    });
    expect(await told('<p>£540</p>', 'en', product([offer('OutOfStock')]))).toMatchObject({
      kind: 'ended',
      availability: 'sold',
    });
  });

  it('a size sold out on a line of its own', async () => {
    const body =
      '<p>£540</p><ul><li>Size 30 – sold out</li><li>24 cm (sold out)</li></ul><button>Add to basket</button>';
    expect(await told(body)).toMatchObject({ kind: 'offer', availability: 'offered' });
    expect(await told('<p>£540</p><p>Sold out</p>')).toMatchObject({ kind: 'ended', availability: 'sold' });
  });

  it("an auction's reserve is no reservation", async () => {
    expect(await told('<p>Current bid: £60</p><p>3 bids</p><p>Reserve</p><p>No reserve</p>')).toMatchObject({
      availability: null,
    });
  });
});
