/** A page of about 20,000 nodes and 1 MB: a listing with a very long table of remarks below. */
export function largePage(): string {
  const filler =
    'written to make this page as heavy as the heaviest shops are, with words that mean nothing to a buyer of bags';
  const row = (index: number) =>
    `<div class="row r${index}" data-index="${index}"><span class="name">Remark ${index}</span><p title="${filler}">Some words about the <a href="/remark/${index}">remark</a> of number ${index}, ${filler}.</p></div>`;
  const rows = Array.from({ length: 2_500 }, (_, index) => row(index)).join('\n');
  const data = {
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: 'Ondrasse Carryall 30, 1995',
    brand: 'Ondrasse',
    description: `Made in Belgium in 1995. ${filler.repeat(20)}`,
    offers: { '@type': 'Offer', price: '540.00', priceCurrency: 'EUR' },
  };
  return `<!doctype html><html lang="en"><head><title>Ondrasse Carryall 30, 1995</title>
<style>.row{padding:2px} .row:nth-child(odd) .name{font-weight:bold}</style>
<script type="application/ld+json">${JSON.stringify(data)}</script></head>
<body><main><h1>Ondrasse Carryall 30, 1995</h1><p class="price">€540.00</p><div class="gallery">${Array.from({ length: 12 }, (_, index) => `<img src="/photos/${index}.jpg" alt="photo ${index}">`).join('')}</div>
<div class="description"><p>One owner, kept in its dust bag since it was bought in Ghent.</p></div>${rows}</main></body></html>`;
}
