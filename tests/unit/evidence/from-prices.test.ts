import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { floorsThen, fromPrices, type PricedListing } from '../../../src/evidence/from-prices';
import type { Listing, Origin, Price } from '../../../src/listing/types';
import type { FilePrice, MakerFile } from '../../../src/maker/types';
import { periodSpan, type Span, yearSpan } from '../../../src/span';
import { claim, ondrasse, priceOf, stated } from '../check/sample';

const plain = { about: 'price', spans: [], places: [], strength: 'soft' } as const;
const onPage = { kind: 'listing', field: 'price' } as const;
const inFile = { kind: 'maker-file', maker: 'Ondrasse', invented: false, part: null } as const;

const from = (origin: Origin, price: Price, caveats?: string[]) => [
  { ...stated(price)[0]!, origin, ...(caveats ? { caveats } : {}) },
];
const page = (price: Listing['price'], condition: Listing['condition'] = []): PricedListing => ({ price, condition });
const filed = (...prices: (Partial<FilePrice> & { least?: number })[]): MakerFile => ({
  ...ondrasse,
  prices: prices.map((one) => ({ condition: 'new', currency: 'EUR', year: 2015, ...one })),
});
const of = (listing: PricedListing, maker: MakerFile | null = null, claims: Claim[] = [], model?: string) =>
  fromPrices(claims, listing, maker, model);
const kinds = (...given: Parameters<typeof of>) => of(...given).map(({ id, says }) => `${id} ${says.kind}`);
const amount = (of: string, sum: number) => ({ of: 'price', unit: of, least: sum, most: sum });

describe('the prices of a page', () => {
  it('are told whole: as shown, as given in data, now and before, and as asked of a used piece', () => {
    const [shown, given, before] = [priceOf(54_050), priceOf(54_000), priceOf(90_000, 'EUR', 'was')];
    const own = { ...plain, source: onPage };
    expect(of(page([...stated(shown), ...from('json-ld', given), ...stated(before)]))).toEqual([
      {
        ...own,
        id: 'price-price-shown-0',
        from: { kind: 'listing', id: 'price-price-shown-0' },
        basis: 'price-price-shown-0',
        amounts: [amount('EUR', 540.5)],
        says: { kind: 'price-shown', price: shown },
      },
      {
        ...own,
        id: 'price-price-in-data-1',
        from: { kind: 'listing', id: 'price-price-in-data-1' },
        basis: 'price-price-in-data-1',
        amounts: [amount('EUR', 540)],
        says: { kind: 'price-in-data', price: given },
      },
      {
        ...own,
        id: 'price-price-now-0',
        from: { kind: 'listing', id: 'price-price-now-0' },
        basis: 'price-price-now-0',
        amounts: [amount('EUR', 540.5)],
        says: { kind: 'price-now', price: shown },
      },
      {
        ...own,
        id: 'price-price-before-0',
        from: { kind: 'listing', id: 'price-price-before-0' },
        basis: 'price-price-before-0',
        amounts: [amount('EUR', 900)],
        says: { kind: 'price-before', price: before },
      },
      {
        ...own,
        id: 'price-asked-used-0',
        from: { kind: 'listing', id: 'price-asked-used-0' },
        basis: 'price-asked-used-0',
        amounts: [
          amount('EUR', 540.5),
          { of: 'price', unit: 'dollars', least: expect.closeTo(459.425, 6), most: expect.closeTo(864.8, 6) },
        ],
        says: { kind: 'asked-used', price: shown },
      },
    ]);
  });

  it('are shown once, the first that the page shows, and given in data as often as they stand there', () => {
    const price = [
      ...from('microdata', priceOf(1)),
      ...stated(priceOf(2)),
      ...stated(priceOf(3)),
      ...from('json-ld', priceOf(4)),
    ];
    expect(kinds(page(price)).slice(0, 3)).toEqual([
      'price-price-shown-1 price-shown',
      'price-price-in-data-0 price-in-data',
      'price-price-in-data-3 price-in-data',
    ]);
  });

  it('are neither shown nor in data where the buyer pointed at them, are of another time, or no sale', () => {
    const spoken = (one: Listing['price']) =>
      kinds(page(one)).filter((said) => said.endsWith('shown') || said.endsWith('data'));
    expect(spoken(from('user-pick', priceOf(1)))).toEqual([]);
    expect(spoken(from('visible', priceOf(1), ['stale']))).toEqual([]);
    expect(spoken(from('json-ld', priceOf(1), ['stale']))).toEqual([]);
    expect(spoken(from('json-ld', priceOf(1), ['repaired']))).toEqual(['price-price-in-data-0 price-in-data']);
    expect(spoken(from('visible', priceOf(1, 'EUR', 'was')))).toEqual([]);
  });

  it('say nothing as a sum where they can be read in two ways', () => {
    const twofold = { ...priceOf(129_900), otherMinor: [1299] };
    expect(kinds(page([...stated(twofold), ...from('json-ld', priceOf(1299))]))).toEqual([
      'price-price-in-data-1 price-in-data',
      'price-price-now-0 price-now',
    ]);
    expect(kinds(page(stated({ ...priceOf(1299), otherMinor: [] })))).toEqual([
      'price-price-shown-0 price-shown',
      'price-price-now-0 price-now',
      'price-asked-used-0 asked-used',
    ]);
  });

  it('are held in their currency, in none that is not settled, and in dollars where its worth is known', () => {
    const unit = (currency: string | null) =>
      of(page(stated(priceOf(100, currency)))).map(({ says, amounts }) => `${says.kind} ${amounts.map((a) => a.unit)}`);
    expect(unit(null)).toEqual(['price-shown unknown', 'price-now unknown']);
    expect(unit('XTS')).toEqual(['price-shown XTS', 'price-now XTS', 'asked-used XTS']);
    expect(unit('GBP')).toEqual(['price-shown GBP', 'price-now GBP', 'asked-used GBP,dollars']);
  });

  it('have as many places behind the point as their currency', () => {
    const yen = { ...priceOf(54_000, 'JPY'), exponent: 0 };
    expect(of(page(stated(yen)))[0]?.amounts).toEqual([amount('JPY', 54_000)]);
  });

  it('are those of the words where the page has none: the first now, and the first before', () => {
    const sum = (minor: number, kind: 'sale' | 'was', id: string) =>
      claim('price', id, { price: priceOf(minor, 'EUR', kind) }, id);
    const said = [sum(100, 'was', 'a'), sum(200, 'sale', 'b'), sum(300, 'sale', 'c'), sum(400, 'was', 'd')];
    const told = (price: Listing['price']) =>
      of(page(price), null, said).flatMap(({ says, amounts }) =>
        says.kind === 'price-now' || says.kind === 'price-before' ? `${says.kind} ${amounts[0]?.least}` : [],
      );
    expect(told([])).toEqual(['price-now 2', 'price-before 1']);
    expect(told(stated(priceOf(900)))).toEqual(['price-now 9', 'price-before 1']);
    expect(told(stated(priceOf(900, 'EUR', 'was')))).toEqual(['price-now 2', 'price-before 9']);
  });

  it('are asked of a new piece where the seller or the first word of the page calls it new or unused', () => {
    const price = stated(priceOf(100));
    const asked = (condition: Listing['condition'], ...claims: Claim[]) =>
      of(page(price, condition), null, claims).at(-1)?.says.kind;
    const said = (condition: 'new' | 'unused' | 'as-new' | 'used') => claim('condition', condition, { condition });
    expect(asked([])).toBe('asked-used');
    expect((['new', 'unused', 'as-new', 'used'] as const).map((one) => asked([], said(one)))).toEqual([
      'asked-new',
      'asked-new',
      'asked-used',
      'asked-used',
    ]);
    expect(asked([], said('used'), said('new'))).toBe('asked-new');
    expect(asked(stated('new'))).toBe('asked-new');
    expect(asked([...stated('used' as const), ...stated('new' as const)])).toBe('asked-used');
    expect(asked(stated('new'), said('used'))).toBe('asked-new');
  });
});

describe('the least prices of a file', () => {
  const priced = page(stated(priceOf(10_000)));
  const floors = (maker: MakerFile, listing = priced, claims: Claim[] = [], model?: string) =>
    of(listing, maker, claims, model).flatMap(({ id, says }) =>
      'amount' in says ? `${id} ${says.kind} ${says.amount}` : [],
    );

  it('are told whole, in their own currency and in dollars', () => {
    const maker = filed({ least: 620, sources: ['price list'] });
    expect(of(page([]), { ...maker, invented: true })).toEqual([
      {
        ...plain,
        id: 'floor-0',
        from: { kind: 'maker-file', id: '0' },
        basis: 'floor:0',
        amounts: [
          amount('EUR', 620),
          { of: 'price', unit: 'dollars', least: expect.closeTo(527, 6), most: expect.closeTo(992, 6) },
        ],
        says: { kind: 'floor-then', maker: 'Ondrasse', amount: 620, currency: 'EUR', year: 2015 },
        source: { ...inFile, invented: true, sources: ['price list'] },
      },
    ]);
    const like = filed({ least: 300, condition: 'worn', model: 'Carryall 30', currency: 'XTS' });
    expect(of(page([], stated('worn')), like, [], 'carryall 30')).toEqual([
      {
        ...plain,
        id: 'floor-like-0',
        from: { kind: 'maker-file', id: '0' },
        basis: 'floor-like:0',
        amounts: [amount('XTS', 300)],
        says: {
          ...{ kind: 'floor-like', maker: 'Ondrasse', amount: 300, currency: 'XTS', year: 2015 },
          model: 'Carryall 30',
        },
        source: { ...inFile, sources: [] },
      },
    ]);
  });

  it('are those of new and unused pieces, and of the condition that the piece is in', () => {
    const maker = filed(
      { least: 600, condition: 'new' },
      { least: 500, condition: 'unused' },
      { least: 200, condition: 'used' },
      { least: 100, condition: 'worn' },
      { condition: 'new', most: 900 },
    );
    expect(floors(maker)).toEqual(['floor-0 floor-then 600', 'floor-1 floor-then 500']);
    const like = (listing: PricedListing, ...claims: Claim[]) =>
      floors(maker, listing, claims).filter((one) => one.startsWith('floor-like'));
    expect(like(page([], stated('used')))).toEqual(['floor-like-0 floor-like 200']);
    expect(like(page([], [...stated('worn' as const), ...stated('used' as const)]))).toEqual([
      'floor-like-0 floor-like 100',
    ]);
    expect(like(page([]), claim('condition', 'worn', { condition: 'worn' }))).toEqual(['floor-like-0 floor-like 100']);
    expect(like(page([], stated('used')), claim('condition', 'worn', { condition: 'worn' }))).toEqual([
      'floor-like-0 floor-like 200',
      'floor-like-1 floor-like 100',
    ]);
    expect(like(page([], stated('new')))).toEqual([]);
    expect(like(page([], stated('damaged')))).toEqual([]);
  });

  it('are those of the model where the file has any of it, else those of no model', () => {
    const maker = filed({ least: 600 }, { least: 900, model: 'Carryall 30' }, { least: 300, model: 'Satchel' });
    expect(floors(maker)).toEqual(['floor-0 floor-then 600']);
    expect(floors(maker, priced, [], 'CARRYALL 30')).toEqual(['floor-0 floor-then 900']);
    expect(floors(maker, priced, [], 'Weekender')).toEqual(['floor-0 floor-then 600']);
  });

  it('are not those of which the model is an exception', () => {
    const maker = filed({ least: 600, exceptions: [{ models: ['Satchel'], what: 'an outlet model' }] }, { least: 700 });
    expect(floors(maker, priced, [], 'satchel')).toEqual(['floor-0 floor-then 700']);
    expect(floors(maker, priced, [], 'Carryall 30')).toHaveLength(2);
    expect(floors(maker)).toHaveLength(2);
  });

  it('are of the time of the piece as the first date says that is told of its making', () => {
    const maker = filed({ least: 300, year: 1995 }, { least: 400, year: 2005 }, { least: 600, year: 2015 });
    const made = (span: Span, id = 'm') => claim('made', id, { span }, id);
    const then = (...claims: Claim[]) => floors(maker, priced, claims).map((one) => one.split(' ')[1]);
    expect(then()).toEqual(['floor', 'floor', 'floor-then']);
    expect(then(made(yearSpan(2004)))).toEqual(['floor-then', 'floor', 'floor']);
    expect(then(made(yearSpan(2005)))).toEqual(['floor', 'floor-then', 'floor']);
    expect(then(made(yearSpan(2014)))).toEqual(['floor', 'floor-then', 'floor']);
    expect(then(made(yearSpan(1980)))).toEqual(['floor-then', 'floor', 'floor']);
    expect(then(made(periodSpan(['1980', null])!))).toEqual(['floor', 'floor', 'floor-then']);
    expect(then(made(yearSpan(2005), 'a'), made(yearSpan(2015), 'b'))).toEqual(['floor', 'floor-then', 'floor']);
    expect(then(claim('bought', 'b', { span: yearSpan(2005) }))).toEqual(['floor', 'floor', 'floor-then']);
  });

  it('are, of the condition of the piece, those of the latest year, whenever it was made', () => {
    const maker = filed(
      { least: 100, condition: 'used', year: 1995 },
      { least: 200, condition: 'used', year: 2020 },
      { least: 150, condition: 'used', year: 2005 },
    );
    const listing = page(stated(priceOf(10_000)), stated('used'));
    expect(floors(maker, listing, [claim('made', 'm', { span: yearSpan(1995) })])).toEqual([
      'floor-like-0 floor-like 200',
    ]);
  });

  it('are of the currency that is asked where the file has any in it', () => {
    const maker = filed(
      { least: 600, currency: 'EUR', year: 2015 },
      { least: 700, currency: 'USD', year: 2010 },
      { least: 650, currency: 'USD', year: 2005 },
    );
    const asked = (listing: PricedListing) => floors(maker, listing).map((one) => one.split(' ').slice(1).join(' '));
    expect(asked(page(stated(priceOf(100, 'USD'))))).toEqual(['floor 600', 'floor-then 700', 'floor 650']);
    expect(asked(page(stated(priceOf(100, 'EUR'))))).toEqual(['floor-then 600', 'floor 700', 'floor 650']);
    expect(asked(page(stated(priceOf(100, 'JPY'))))).toEqual(['floor-then 600', 'floor 700', 'floor 650']);
    expect(asked(page([]))).toEqual(['floor-then 600', 'floor 700', 'floor 650']);
  });

  it('are none of no file, and of a file without prices', () => {
    expect(kinds(page([], stated('used')), null)).toEqual([]);
    expect(kinds(page([], stated('used')), filed())).toEqual([]);
  });
});

describe('the floors of a time', () => {
  const [a, b, c] = [
    { year: 1990, currency: 'EUR' },
    { year: 2000, currency: 'EUR' },
    { year: 2000, currency: 'USD' },
  ];
  it.each([
    ['of a year before all: the earliest', 'EUR', '1980-01-01', [a]],
    ['of the first year itself', 'EUR', '1990-12-31', [a]],
    ['of the year before the second', 'EUR', '1999-12-31', [a]],
    ['of the second year', 'EUR', '2000-01-01', [b]],
    ['of no year: the latest', 'EUR', null, [b]],
    ['of another currency alone', 'USD', '1990-01-01', [c]],
    ['of a currency that none is in: all of the year', 'GBP', null, [b, c]],
    ['of no currency: all of the year', null, '1995-06-01', [a]],
  ] as const)('%s', (_, currency, madeBy, wanted) => {
    expect(floorsThen([a, b, c], currency, madeBy)).toEqual(wanted);
  });
});
