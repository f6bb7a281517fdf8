import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { type Gathered, gatherEvidence } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import { monthSpan, sinceSpan, yearSpan } from '../../../src/span';
import { claim, decoded, measureOf, ondrasse, priceOf, reading, stated, withPhotos } from '../check/sample';

const maker = {
  ...ondrasse,
  models: [
    {
      name: 'Carryall 30',
      runs: [
        { made: ['1985', '1995'], size: { width: 30, unit: 'cm', tolerance: 1 } },
        { made: ['2000', '2010'], size: { width: 33, unit: 'cm', tolerance: 1 } },
      ],
    },
  ],
  prices: [
    { condition: 'new', least: 620, currency: 'EUR', year: 2015 },
    { condition: 'new', least: 900, currency: 'EUR', year: 2015, model: 'Carryall 30' },
  ],
  numbers: [{ of: 'stitches', part: 'tab', least: 6, most: 8, models: ['Carryall 30'] }],
} as MakerFile;
const listing = withPhotos(1, {
  title: stated('Ondrasse Carryall 30'),
  measures: stated(measureOf('width', 315, '31.5 cm')),
  price: stated(priceOf(10_000)),
  condition: stated('new'),
});
const seen = { id: 'o', photoId: 'p1', mark: 1, on: 'tab', what: 'count', value: 7, uncertainty: 0 } as const;
const measured = { observations: [seen], apart: () => 0 };
const gathered = (given: Partial<Gathered> = {}) =>
  gatherEvidence({
    claims: [],
    decodings: [],
    marks: [],
    maker,
    listing,
    measured,
    now: '2026-01-15T10:00:00Z',
    ...given,
  });
const ids = (given: Partial<Gathered> = {}) => gathered(given).map(({ id }) => id);

describe('what is gathered beside dates and places', () => {
  const prices = ['price-price-shown-0', 'price-price-now-0', 'price-asked-new-0', 'floor-0'];

  it('is all that the page, the file, a hand and the day give', () => {
    expect(ids()).toEqual([
      ...['stamping', 'stamping-begun', 'today', 'size-read-0', 'model-size-width'],
      ...['measured-o', 'file-number-0', ...prices, 'quality-field'],
    ]);
  });

  it('is nothing of the size, of what was measured and of a model’s prices where several pieces are on offer', () => {
    expect(ids({ severalPieces: true })).toEqual(['stamping', 'stamping-begun', 'today', ...prices, 'quality-field']);
    const floor = (severalPieces: boolean) =>
      gathered({ severalPieces }).flatMap(({ says }) => (says.kind === 'floor-then' ? [says.amount] : []));
    expect([floor(false), floor(true)]).toEqual([[900], [620]]);
  });

  it('is nothing of the page without one, of ages without a day, and of a file without one', () => {
    const { listing: _, now: __, ...rest } = { listing, now: '' };
    expect(
      gatherEvidence({ claims: [], decodings: [], marks: [], maker, measured, ...rest }).map(({ id }) => id),
    ).toEqual(['stamping', 'stamping-begun']);
    expect(ids({ maker: null })).toEqual(['today', 'size-read-0', ...prices.slice(0, 3), 'quality-field']);
    expect(ids({ measured: { observations: [], apart: () => 0 } })).not.toContain('measured-o');
  });
});

describe('the dates by which a size of the model is chosen', () => {
  const width = (given: Partial<Gathered>) =>
    gathered(given).flatMap(({ says }) => (says.kind === 'model-size' ? [says.mm] : []))[0];
  const made = (year: number): Claim => claim('made', 'm', { span: yearSpan(year) }, 'm');
  const bought = claim('bought', 'b', { span: yearSpan(1994) }, 'b');
  const code = (year: number, over = {}) => decoded('KV', [reading('KV', monthSpan(year, 1))], over);

  it('are those that are said or read, and a purchase where nothing else is', () => {
    // Between the two sizes, and nearer to neither: without a date the first.
    expect(width({})).toBe(300);
    expect(width({ claims: [made(2005)] })).toBe(330);
    expect(width({ decodings: [code(2005)] })).toBe(330);
    expect(width({ decodings: [code(2005, { accepted: false })] })).toBe(300);
    expect(width({ claims: [made(1990)], decodings: [code(2005)] })).toBe(300);
    expect(width({ claims: [bought] })).toBe(300);
    expect(width({ claims: [bought, made(2005)] })).toBe(330);
    expect(width({ claims: [bought], decodings: [code(2005)] })).toBe(330);
    // A purchase allows all that is older, and one that is open everything.
    const late = { ...listing, measures: stated(measureOf('width', 330, '33 cm')) };
    expect(width({ listing: late, claims: [bought] })).toBe(300);
    const since = claim('bought', 'b', { span: sinceSpan('2005-01-01') }, 'b');
    expect(width({ listing: late, claims: [since] })).toBe(330);
  });
});

it('a fact of the file is not sure of an edition that only the title names', () => {
  const runs = [{ kind: 'edition', name: 'Harbour', made: ['1985', '2010'] }];
  const construction = [{ part: 'lining', is: 'twill', used: ['1990', '1995'], strength: 'hard' }];
  const edition = { ...maker, models: [{ name: 'Satchel', runs }], construction } as MakerFile;
  const claims = [
    claim('model', 'Satchel', { model: 'Satchel' }, 'mo'),
    claim('material', 'twill', { part: 'lining', material: 'twill' }, 'm'),
  ];
  const strength = (title: string) =>
    gathered({ maker: edition, claims, listing: { ...listing, title: stated(title) } }).find(
      ({ says }) => says.kind === 'material',
    )?.strength;
  expect([strength('Ondrasse Satchel'), strength('Ondrasse Satchel, Harbour')]).toEqual(['hard', 'soft']);
});
