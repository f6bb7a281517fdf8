import { describe, expect, it } from 'vitest';
import type { ItemValue } from '../../../src/listing/structured/item';
import { offersOf } from '../../../src/listing/structured/offer-facts';
import { daySpan, yearSpan } from '../../../src/span';
import { euro, offer, read, thing, told, type Value } from './data-things';

describe('an offer of the data', () => {
  const of = (properties: Record<string, Value>, product: Record<string, Value> = {}) =>
    read(thing('Product', { ...product, offers: offer(properties) })).draft;

  it('is read whole: price, state, code, seller, returns, shipping, payment and day', () => {
    const draft = of({
      price: '540',
      availability: 'InStock',
      itemCondition: 'NewCondition',
      sku: 'S9',
      seller: thing('Organization', {
        name: 'Moth and Lamp',
        aggregateRating: thing('AggregateRating', { ratingValue: '4.5', ratingCount: '12' }),
        address: thing('PostalAddress', { addressLocality: 'Ghent', addressCountry: 'BE' }),
        foundingDate: '2011',
      }),
      hasMerchantReturnPolicy: thing('MerchantReturnPolicy', {
        returnPolicyCategory: 'https://schema.org/MerchantReturnFiniteReturnWindow',
        merchantReturnDays: 14,
      }),
      shippingDetails: thing('OfferShippingDetails', {
        shippingRate: thing('MonetaryAmount', { value: '9.50', currency: 'EUR' }),
      }),
      acceptedPaymentMethod: ['http://purl.org/goodrelations/v1#ByInvoice', 'Cash'],
      validFrom: '2026-02-14T10:00:00Z',
    });
    expect(told(draft.price)).toEqual([`${euro(54_000)} | price | 0.9 | 540`]);
    expect(told(draft.availability)).toEqual(['"offered" | availability | 0.9 | InStock']);
    expect(told(draft.condition)).toEqual(['"new" | itemCondition | 0.9 | NewCondition']);
    expect(told(draft.itemCode)).toEqual(['"S9" | sku | 0.63']);
    expect(told(draft.seller.name)).toEqual(['"Moth and Lamp" | seller | 0.9']);
    expect(told(draft.seller.trader)).toEqual(['"trader" | seller | 0.63']);
    expect(draft.seller.rating.map(({ value }) => value)).toEqual([{ share: 0.9, count: 12, words: '4.5 / 5' }]);
    expect(told(draft.seller.place)).toEqual(['"Ghent, BE" | seller > address | 0.9']);
    expect(draft.seller.memberSince).toMatchObject([{ value: yearSpan(2011), words: '2011' }]);
    expect(draft.returns.map(({ value }) => value)).toEqual([
      { accepted: true, days: 14, words: 'MerchantReturnFiniteReturnWindow' },
    ]);
    expect(told(draft.shipping)).toEqual(['"9.50 EUR" | shippingDetails | 0.9']);
    expect(told(draft.payment)).toEqual([
      '"ByInvoice" | acceptedPaymentMethod | 0.9',
      '"Cash" | acceptedPaymentMethod | 0.9',
    ]);
    expect(draft.posted).toMatchObject([
      { value: daySpan('2026-02-14'), confidence: 0.72, words: '2026-02-14T10:00:00Z' },
    ]);
  });

  it('has a seller by name, who is a person, a trader or neither', () => {
    const seller = (value: ItemValue) => of({ seller: value }).seller;
    expect(told(seller('moth_and_lamp').name)).toEqual(['"moth_and_lamp" | seller | 0.9']);
    const trader = (type: string) =>
      told(seller(thing(type, { name: 'x' })).trader)[0]
        ?.split(' | ')
        .join(' ');
    expect(trader('Person')).toBe('"private" seller 0.72');
    expect(['Organization', 'OnlineStore', 'LocalBusiness', 'Corporation'].map(trader)).toEqual(
      Array(4).fill('"trader" seller 0.63'),
    );
    expect(trader('Thing')).toBeUndefined();
    expect(told(of({ offeredBy: 'x' }).seller.name)).toEqual(['"x" | seller | 0.9']);
  });

  it('has a rating as a share of its best, where it is within it', () => {
    const rating = (properties: Record<string, Value>) =>
      of({ seller: thing('Person', { aggregateRating: thing('AggregateRating', properties) }) }).seller.rating.map(
        ({ value: { share, count, words } }) => `${share} of ${count}, ${words}`,
      );
    expect(rating({ ratingValue: 98, bestRating: 100, reviewCount: 0 })).toEqual(['0.98 of 0, 98 / 100']);
    expect(rating({ ratingValue: 2, bestRating: 3 })).toEqual(['0.6667 of null, 2 / 3']);
    expect(rating({ ratingValue: 5, ratingCount: '1.5' })).toEqual(['1 of null, 5 / 5']);
    expect(rating({ ratingValue: 5, ratingCount: -1 })).toEqual(['1 of null, 5 / 5']);
    // Nobody can give less than the least: shops write 0 where nobody has rated.
    expect(rating({ ratingValue: 0, ratingCount: 0 })).toEqual([]);
    expect(rating({ ratingValue: 1 })).toEqual(['0.2 of null, 1 / 5']);
    expect(rating({ ratingValue: 0, bestRating: 100 })).toEqual(['0 of null, 0 / 100']);
    expect(rating({ ratingValue: 5, worstRating: 2 })).toEqual(['1 of null, 5 / 5 (from 2)']);
    expect(rating({ ratingValue: 5, worstRating: 1 })).toEqual(['1 of null, 5 / 5']);
    expect([6, -1, 'x'].map((ratingValue) => rating({ ratingValue }))).toEqual([[], [], []]);
    expect(rating({ ratingValue: 0, bestRating: 0 })).toEqual([]);
    expect(rating({})).toEqual([]);
  });

  it('takes the piece back as its policy says', () => {
    const back = (properties: Record<string, Value>) =>
      of({ hasMerchantReturnPolicy: thing('MerchantReturnPolicy', properties) }).returns.map(
        ({ value: { accepted, days, words } }) => `${accepted} ${days} ${words}`,
      );
    const category = (name: string) => ({ returnPolicyCategory: `https://schema.org/MerchantReturn${name}` });
    expect(back({ ...category('NotPermitted'), merchantReturnDays: 14 })).toEqual([
      'false null MerchantReturnNotPermitted',
    ]);
    expect(back(category('UnlimitedWindow'))).toEqual(['true null MerchantReturnUnlimitedWindow']);
    expect(back({ merchantReturnDays: 1 })).toEqual(['true 1 1 days']);
    expect(back({ merchantReturnDays: 0 })).toEqual([]);
    expect(back({ merchantReturnDays: 1.5 })).toEqual([]);
    expect(back({ ...category('FiniteReturnWindow'), merchantReturnDays: 0 })).toEqual([
      'true null MerchantReturnFiniteReturnWindow',
    ]);
    expect(back(category('Unspecified'))).toEqual([]);
  });

  it('has an address in words or in parts, of those that are given', () => {
    const place = (address: ItemValue) => of({ seller: thing('Person', { address }) }).seller.place[0]?.value;
    expect(place('Ghent')).toBe('Ghent');
    const parts = { addressCountry: 'BE', addressRegion: 'East Flanders', addressLocality: 'Ghent' };
    expect(place(thing('PostalAddress', parts))).toBe('Ghent, East Flanders, BE');
    expect(place(thing('PostalAddress', { addressRegion: 'Flanders' }))).toBe('Flanders');
    expect(place(thing('PostalAddress'))).toBeUndefined();
  });

  it('has a day of its own before that of the product, and a shipping that costs something', () => {
    const posted = (own: Record<string, Value>, product: Record<string, Value>) =>
      of(own, product).posted.map(({ words }) => words);
    expect(posted({ availabilityStarts: '2026-02-01' }, { datePosted: '2026-01-01' })).toEqual(['2026-02-01']);
    expect(posted({}, { datePublished: '2026-01-01' })).toEqual(['2026-01-01']);
    expect(posted({}, { dateCreated: 'yesterday' })).toEqual([]);
    const rate = (properties: Record<string, Value>) =>
      of({ shippingDetails: thing('OfferShippingDetails', { shippingRate: thing('MonetaryAmount', properties) }) })
        .shipping[0]?.value;
    expect(rate({ price: 5, priceCurrency: 'GBP' })).toBe('5 GBP');
    expect(rate({ value: 5 })).toBe('5');
    expect(rate({ currency: 'GBP' })).toBeUndefined();
    expect(told(of({ shippingDetails: thing('OfferShippingDetails') }).shipping)).toEqual([]);
  });

  it('is one of twenty at most, an aggregate’s own among them, each once', () => {
    const offers = Array.from({ length: 21 }, (_, at) => offer({ price: at + 1 }));
    expect(offersOf(thing('Product', { offers }))).toEqual(offers.slice(0, 20));
    const aggregate = thing('AggregateOffer', { offers: [offers[0]!, offers[1]!] });
    expect(offersOf(thing('Product', { offers: [aggregate, offers[1]!] }))).toEqual([aggregate, offers[1], offers[0]]);
    const itself = thing(['Product', 'Offer'], { price: 5 });
    expect(offersOf(itself)).toEqual([itself]);
    expect(offersOf(thing('Product', { offers: thing('Offer', { offers: offers[0]! }) }))).toHaveLength(1);
  });
});
