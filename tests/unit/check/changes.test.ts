import { describe, expect, it } from 'vitest';
import { buildCase, lookAt } from '../../../src/case';
import { changesSince } from '../../../src/check';
import type { Listing, Price } from '../../../src/listing/types';
import { listingOf } from '../case/sample-listing';
import { ondrasse, stated } from './sample';

const now = '2026-01-15T10:00:00Z';
const built = (listing: Listing) => buildCase({ listing, photos: [], corrections: [], makers: [ondrasse], now });
const changes = (before: Listing, after: Listing) => {
  const { listing, claims } = built(after);
  return changesSince(lookAt(built(before)), listing, claims);
};
const eur = (minor: number, rest: Partial<Price> = {}): Price => ({
  kind: 'sale',
  minor,
  exponent: 2,
  currency: 'EUR',
  currencies: ['EUR'],
  ...rest,
});
const said = 'Made in 1995 in Belgium. Used, with light wear. Handle 12 cm.';
const listing = (rest: Partial<Listing> = {}, description = said, photos = 3) =>
  listingOf('Ondrasse Carryall 30', description, photos, { price: stated(eur(54_000)), ...rest });

describe('what a listing says otherwise than before', () => {
  it('is nothing where it says the same in other places and other spacing', () => {
    expect(changes(listing(), listing())).toEqual([]);
    expect(changes(listing(), listing({}, ` ${said.replaceAll(' ', '\n')}`))).toEqual([]);
  });

  it('is any change of the price, a small one and a rise too', () => {
    for (const price of [eur(53_900), eur(70_000), eur(54_000, { currency: 'GBP', currencies: ['GBP'] })])
      expect(changes(listing(), listing({ price: stated(price) }))).toEqual([
        { what: 'price', before: eur(54_000), now: price },
      ]);
    expect(changes(listing(), listing({ price: [] }))).toEqual([{ what: 'price', before: eur(54_000), now: null }]);
  });

  it('is the price asked now, where the old one stands beside it struck through', () => {
    const price = [...stated(eur(48_000)), ...stated(eur(54_000, { kind: 'was' }))];
    expect(changes(listing(), listing({ price }))).toEqual([{ what: 'price', before: eur(54_000), now: eur(48_000) }]);
  });

  it('is no price whose currency only one look could settle', () => {
    const open = eur(54_000, { currency: null, currencies: ['EUR', 'USD'] });
    expect(changes(listing({ price: stated(open) }), listing())).toEqual([]);
  });

  it('is another title, and another seller', () => {
    const seller = { ...listing().seller, name: stated('Odo') };
    expect(changes(listing(), listing({ title: stated('Ondrasse Carryall 35'), seller }))).toEqual(
      expect.arrayContaining([
        { what: 'title', before: 'Ondrasse Carryall 30', now: 'Ondrasse Carryall 35' },
        { what: 'seller', before: 'Mina', now: 'Odo' },
      ]),
    );
  });

  it('is a single sentence more or less, and none that only stands elsewhere', () => {
    const more = 'The zip runs well.';
    expect(changes(listing(), listing({}, `${said} ${more}`))).toContainEqual({
      what: 'description',
      gone: [],
      added: [more],
    });
    expect(changes(listing({}, `${said} ${more}`), listing())).toContainEqual({
      what: 'description',
      gone: [more],
      added: [],
    });
    expect(changes(listing({}, `${said} ${more}`), listing({}, `${more} ${said}`))).toEqual([]);
  });

  it('is each sentence of the description that is gone or new', () => {
    const after = listing({}, `${said} The dust bag is in the picture.`.replace('Handle 12 cm.', 'The key is lost.'));
    expect(changes(listing(), after)).toEqual([
      {
        what: 'description',
        gone: ['Handle 12 cm.'],
        added: ['The key is lost.', 'The dust bag is in the picture.'],
      },
      expect.objectContaining({ what: 'claim', kind: 'measure', added: [] }),
    ]);
    expect(changes(listing(), listing({ description: [] })).map(({ what }) => what)).toContain('description');
  });

  it('is each photo that is gone or new, by whatever host and in whatever size it is shown', () => {
    const [first, second, third] = listing().photos;
    if (!first || !second || !third) throw new Error('three photos were made');
    const fourth = { ...third, id: 'p4', url: 'https://attic-arcade.example/photo/4.jpg' };
    expect(changes(listing(), listing({ photos: [fourth, second, third] }, said, 3))).toEqual([]);
    const after = { ...listing(), photos: [fourth, { ...second, url: second.url.replace('attic', 'cdn.attic') }] };
    expect(changes(listing(), after)).toEqual([{ what: 'photos', gone: 2, added: [1], of: 3, now: 2 }]);
  });

  it('is only the number of photos, where the page makes their addresses itself', () => {
    const made = (from: number, count: number) => ({
      ...listing(),
      photos: listing({}, said, count).photos.map((photo, index) => ({
        ...photo,
        url: `blob:https://attic-arcade.example/${from + index}`,
      })),
    });
    expect(changes(made(0, 3), made(10, 3))).toEqual([]);
    expect(changes(made(0, 3), made(10, 2))).toEqual([{ what: 'photos', gone: 1, added: null, of: 3, now: 2 }]);
  });

  it('is each statement that is gone or new', () => {
    const after = changes(listing(), listing({}, said.replace('1995', '1996')));
    expect(after.map((change) => (change.what === 'claim' ? change.kind : change.what))).toEqual([
      'description',
      'made',
    ]);
    expect(after.find(({ what }) => what === 'claim')).toMatchObject({
      gone: [{ span: { from: '1995-01-01' } }],
      added: [{ span: { from: '1996-01-01' } }],
    });
  });

  it('is no statement that only a newer version finds in the same words', () => {
    const before = lookAt(built(listing({ returns: [] })));
    const { listing: same, claims } = built(listing({ returns: [] }));
    expect(changesSince({ ...before, claims: [] }, same, claims)).toEqual([]);
    expect(changesSince(before, same, [])).toEqual([]);
  });

  it('is no description where the earlier look kept none', () => {
    const { description: _, ...older } = lookAt(built(listing()));
    const { listing: same, claims } = built(listing());
    expect(changesSince(older, same, claims)).toEqual([]);
  });
});
