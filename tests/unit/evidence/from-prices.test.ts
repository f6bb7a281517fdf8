import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import type { Listing, Origin, Price } from '../../../src/listing/types';
import { claim, priceOf, stated } from '../check/sample';
import { amount, kinds, of, page, plain } from './priced';

const onPage = { kind: 'listing', field: 'price' } as const;
const from = (origin: Origin, price: Price, caveats?: string[]) => [
  { ...stated(price)[0]!, origin, ...(caveats ? { caveats } : {}) },
];

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
