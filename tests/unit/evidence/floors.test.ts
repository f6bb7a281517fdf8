import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { floorsThen, type PricedListing } from '../../../src/evidence/from-prices';
import type { FilePrice, MakerFile } from '../../../src/maker/types';
import { periodSpan, type Span, yearSpan } from '../../../src/span';
import { claim, ondrasse, priceOf, stated } from '../check/sample';
import { amount, kinds, of, page, plain } from './priced';
import { inFile } from './samples';

const filed = (...prices: (Partial<FilePrice> & { least?: number })[]): MakerFile => ({
  ...ondrasse,
  prices: prices.map((one) => ({ condition: 'new', currency: 'EUR', year: 2015, ...one })),
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
