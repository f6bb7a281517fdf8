/** The mark-up of a page that sells one bag, with these photos in its data; `more` stands under its price. */
export const listingHtml = (photos: readonly string[], more = '') =>
  `<!doctype html><html lang="en"><head><title>Bag</title><script type="application/ld+json">${JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: 'Ondrasse Carryall 30',
    brand: 'Ondrasse',
    image: photos,
    offers: { '@type': 'Offer', price: '540', priceCurrency: 'EUR' },
  })}</script></head><body><main><h1>Ondrasse Carryall 30</h1><p>€540</p>${more}</main></body></html>`;

/** The same page, as the marketplace answers with it. */
export const listingPage = (photos: readonly string[], more = '') => ({
  type: 'text/html',
  body: listingHtml(photos, more),
});
