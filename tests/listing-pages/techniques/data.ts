import type { TechniquePage } from '../reading';

/** A page with JSON-LD in its head and a heading of the piece. */
export const withData = (data: unknown, body = '<main><h1>Ondrasse Palma Tote</h1></main>'): string =>
  `<html lang="en"><head><title>Ondrasse Palma Tote</title>${[data]
    .flat()
    .map((one) => `<script type="application/ld+json">${typeof one === 'string' ? one : JSON.stringify(one)}</script>`)
    .join('')}</head><body>${body}</body></html>`;

export const tote = { '@type': 'Product', name: 'Ondrasse Palma Tote' };
const offered = (offers: unknown, more: object = {}): string => withData({ ...tote, ...more, offers });
const priced = (offer: object): string =>
  offered({ '@type': 'Offer', price: '540.00', priceCurrency: 'EUR', ...offer });
const at = (selector: string): object => ({ '@type': 'Offer', price: '540', priceCurrency: 'EUR', url: selector });

/** What a product's data says, field by field. */
export const data: Record<string, TechniquePage> = {
  'every field of a product': withData({
    '@context': 'https://schema.org',
    '@type': ['Product', 'IndividualProduct'],
    name: 'Ondrasse Palma Tote &amp; Strap',
    headline: 'The Palma of spring',
    alternateName: 'Palma',
    description: 'Smooth leather.<br>Made in 1995.<p>Strap 100 cm.</p>',
    brand: [{ '@type': 'Brand', name: 'Ondrasse' }, 'Ondrasse Atelier'],
    manufacturer: { name: 'Ondrasse Werke' },
    model: 'Palma',
    mpn: 'PT-77',
    sku: 'SKU-1',
    productID: 'isbn:123',
    gtin13: '4006381333931',
    gtin: '0004006381333931',
    color: ['Tan', 'Brown'],
    material: ['Calf leather', 'Brass'],
    itemCondition: 'https://schema.org/UsedCondition',
    additionalProperty: [
      { name: 'Lining', value: 'Suede' },
      { propertyID: 'Condition', value: 'Very good' },
      { name: 'Empty' },
      { name: 'n'.repeat(61), value: 'v'.repeat(601) },
    ],
  }),
  'a name under title, and a name of its own for the headline': withData({
    '@type': 'Product',
    title: 'Ondrasse Palma Tote',
    alternateName: 'Palma',
  }),
  'measures as quantities, with and without a unit': withData({
    ...tote,
    width: { value: '30', unitCode: 'CMT' },
    height: [{ value: '8,5', unitText: 'inches' }, '210 mm', '12', '0 cm'],
    depth: ['17,25 cm', '6.5"', '4 IN', '5 inch', { value: '1234', unitCode: 'mmt' }, '12345 cm', '7.125 cm', '3 m'],
  }),
  'measures in the other codes': withData({
    ...tote,
    width: [{ value: 3, unitCode: 'INH' }, '30 CM', { value: 'wide', unitCode: 'CMT' }],
    depth: '9 inches',
  }),
  'an offer with all that goes with it': priced({
    availability: 'https://schema.org/InStock',
    itemCondition: 'LikeNewCondition',
    sku: 'OFFER-9',
    validFrom: '2026-02-03T10:00:00Z',
    acceptedPaymentMethod: ['http://purl.org/goodrelations/v1#PayPal', 'Cash'],
    hasMerchantReturnPolicy: {
      '@type': 'MerchantReturnPolicy',
      returnPolicyCategory: 'https://schema.org/MerchantReturnFiniteReturnWindow',
      merchantReturnDays: 14,
    },
    shippingDetails: [
      { shippingRate: { value: '7.50', currency: 'EUR' } },
      { shippingRate: { price: '9', priceCurrency: 'USD' } },
      { shippingRate: { value: '0' } },
      { deliveryTime: 'soon' },
    ],
    seller: {
      '@type': 'Organization',
      name: 'Attic & Arcade',
      foundingDate: '2011-05-06',
      address: { addressLocality: 'Ghent', addressRegion: 'East Flanders', addressCountry: 'BE' },
      aggregateRating: { ratingValue: 4.7, reviewCount: 318 },
    },
  }),
  'a private seller, with a place in words and a scale of ten': priced({
    offeredBy: {
      '@type': 'Person',
      name: 'harbour_attic',
      memberSince: '2019',
      address: 'Leeds, UK',
      aggregateRating: { ratingValue: 9, bestRating: 10, worstRating: 2, ratingCount: '12.5' },
    },
  }),
  'a seller as plain text': priced({ seller: 'harbour_attic' }),
  'a store as seller, rated beyond its scale, then from nought': priced({
    seller: {
      '@type': 'LeatherStore',
      name: 'Rook & Daughters',
      dateCreated: '2015-01-02',
      address: [{ addressCountry: 'NL' }, 'Delft'],
      aggregateRating: [
        { ratingValue: 6 },
        { ratingValue: -1 },
        { ratingValue: 0, ratingCount: 0 },
        { ratingValue: 5, bestRating: 5, ratingCount: -2 },
      ],
    },
  }),
  'a scale that begins at its own first step': priced({
    seller: { name: 'x_y', aggregateRating: { ratingValue: 3, bestRating: 3, worstRating: 1, ratingCount: 3 } },
  }),
  'returns refused': priced({
    hasMerchantReturnPolicy: { returnPolicyCategory: 'MerchantReturnNotPermitted', merchantReturnDays: 0 },
  }),
  'returns without a category, and one of no meaning': priced({
    hasMerchantReturnPolicy: [
      { merchantReturnDays: '30' },
      { merchantReturnDays: 1.5 },
      { returnPolicyCategory: 'MerchantReturnUnspecified' },
      { returnPolicyCategory: 'MerchantReturnUnlimitedWindow' },
    ],
  }),
  'the date of a product without one of its offer': offered(
    { '@type': 'Offer', price: 3 },
    { datePosted: '2025-12-24' },
  ),
  'an offer that begins later': priced({ availabilityStarts: '2026-01-05' }),
  'several offers of which one is gone': offered([
    { ...at('#1'), availability: 'OutOfStock' },
    { ...at('#2'), availability: 'InStock' },
  ]),
  'all offers gone': offered([
    { ...at('#1'), availability: 'SoldOut' },
    { ...at('#2'), availability: 'Discontinued' },
  ]),
  'a reserved piece that is for pre-order': offered([
    { ...at('#1'), availability: 'Reserved' },
    { ...at('#2'), availability: 'PreOrder' },
  ]),
  'twenty-one offers': offered(
    Array.from({ length: 21 }, (_, index) => ({
      '@type': 'Offer',
      sku: `S${index}`,
      availability: index === 20 ? 'InStock' : 'SoldOut',
    })),
  ),
  'an aggregate offer as a range, with offers inside': offered({
    '@type': 'AggregateOffer',
    lowPrice: '100',
    highPrice: '300',
    priceCurrency: 'EUR',
    offers: [{ '@type': 'Offer', price: 120, priceCurrency: 'EUR' }],
  }),
  'an aggregate offer with a low end only': offered({
    '@type': 'AggregateOffer',
    lowPrice: '100',
    priceCurrency: 'EUR',
  }),
  'an aggregate offer with a high end only': offered({
    '@type': 'AggregateOffer',
    highPrice: '100',
    priceCurrency: 'EUR',
  }),
  'an aggregate offer whose ends meet': offered({
    '@type': 'AggregateOffer',
    lowPrice: '100',
    highPrice: '100.00',
    priceCurrency: 'EUR',
  }),
  'a thing that is its own offer': withData({
    '@type': ['Product', 'Offer'],
    name: 'Ondrasse Palma Tote',
    price: '75',
    priceCurrency: 'GBP',
  }),
  'price specifications of every kind': offered({
    '@type': 'Offer',
    price: '600',
    priceCurrency: 'EUR',
    priceSpecification: [
      { price: '540', priceCurrency: 'EUR' },
      { price: '800', priceType: 'https://schema.org/ListPrice' },
      { price: '7', '@type': 'DeliveryChargeSpecification' },
      { price: '3', '@type': 'PaymentChargeSpecification' },
      { price: '54', referenceQuantity: { unitCode: 'KGM' } },
      { price: '541', referenceQuantity: { unitText: 'C62' }, priceCurrency: 'USD' },
      {
        price: '900',
        priceType: 'SRP',
        priceComponent: [{ price: '901' }, { price: '902', priceType: 'strikethrough' }],
      },
    ],
  }),
  'a specification that is dearer than the offer': offered({
    price: '500',
    priceCurrency: 'EUR',
    priceSpecification: { price: '540' },
  }),
  'two prices without a specification': offered({ price: ['600', '500'], priceCurrency: 'EUR' }),
  'a price as a thing, and prices that are none': offered([
    { price: { value: '540,50', priceCurrency: 'chf' } },
    { price: { price: '1.299', currency: '€' } },
    { price: true },
    { price: '' },
    { price: 'NaN' },
    { price: 0, priceCurrency: 'EUR' },
    { price: 'on request' },
  ]),
  'amounts with more decimals than the currency has': offered([
    { price: '540.5', priceCurrency: 'JPY' },
    { price: '540.0', priceCurrency: 'JPY' },
    { price: '1.299', priceCurrency: 'EUR' },
    { price: '1,299.00', priceCurrency: 'USD' },
    { price: '123456789012', priceCurrency: 'EUR' },
    { price: '£45' },
    { price: '45 kr' },
    { price: '45' },
  ]),
  'photos as addresses, things and parts': withData({
    ...tote,
    image: [
      '/photos/front.jpg',
      { '@type': 'ImageObject', contentUrl: '/photos/back.jpg', width: '1200', height: '900', caption: 'The back' },
      { url: '/photos/side.jpg', name: 'Ondrasse Palma Tote', width: 100_000, height: 0 },
      { '@id': '/photos/base.jpg', width: 99_999, height: '12px' },
      '/photos/logo.svg',
      '/photos/placeholder.jpg',
      'javascript:alert(1)',
    ],
    photo: { url: '/photos/stamp.jpg', width: { value: 640 } },
    images: '/photos/inside.jpg',
  }),
};
